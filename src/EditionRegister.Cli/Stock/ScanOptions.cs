using System.CommandLine;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Cli;

/// <summary>The options with which codes are given that were typed or scanned.</summary>
internal sealed class ScanOptions
{
    private readonly Option<string?> _codes = Opt.Text("--codes", "CODES", $"Codes as typed or scanned, parted by commas: {RegisterCode.Form}; links of QR codes are understood too.");
    private readonly Option<string?> _file = Opt.Text("--file", "FILE", "A text file with one code in each line; empty lines and lines that begin with # are passed over.");

    public void AddTo(Command command)
    {
        command.Add(_codes);
        command.Add(_file);
    }

    /// <exception cref="WrongUsageException">Both were given.</exception>
    public ScanList Read(CommandContext context, ParseResult line) => (line.GetValue(_codes), line.GetValue(_file)) switch
    {
        (not null, not null) => throw new WrongUsageException("Give the codes with --codes or with --file, not with both."),
        (_, { } file) => ScansFromFile.Read(context.PathOf(file)!),
        (var codes, _) => ScanList.OfTyped(codes ?? ""),
    };
}
