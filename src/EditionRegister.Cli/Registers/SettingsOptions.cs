using System.CommandLine;
using System.Globalization;
using EditionRegister.Domain.Documents;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Cli;

/// <summary>What may be changed about a register's settings.</summary>
internal sealed class SettingsOptions
{
    private static readonly string[] Pages = [.. PageSize.All.Select(page => page.Word)];
    private static readonly string[] Writings = [.. Domain.Sizes.SizeWriting.All.Select(writing => writing.Word)];

    private readonly Option<string?> _name = Opt.Text("--name", "NAME", "What the register is called.");
    private readonly Option<string?> _writer = Opt.Text("--writer", "WHO", "Who writes in this register: a name or number of the address book.");
    private readonly Option<bool> _noWriter = Opt.Flag("--no-writer", "Nobody is named as the one who writes.");
    private readonly Option<string?> _currency = new("--currency") { HelpName = "CODE", Description = "Used where a price names no currency, in three letters. Prices that stand are left as they are.", CustomParser = Given.One<string?>(CurrencyOption.TryRead!, CurrencyOption.Form) };
    private readonly Option<string?> _units = Opt.Word("--units", ["mm", "in"], "How sizes are shown on documents.");
    private readonly Option<string?> _writing = SizeWriting("How sizes are written for people: as measured, or rounded in cm and inches as rules for cataloguing have it.");
    private readonly Option<string?> _page = Opt.Word("--page", Pages, "Paper for certificates and lists.");
    private readonly Option<string?> _url = BaseUrl("Put before /CODE in the links that QR codes hold.");
    private readonly Option<bool> _noUrl = Opt.Flag("--no-base-url", "Print no QR codes.");
    private readonly Option<double?> _right = Offset("--printer-right", "How far labels are moved to the right; negative moves them to the left.");
    private readonly Option<double?> _down = Offset("--printer-down", "How far labels are moved down; negative moves them up.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _name, _writer, _noWriter, _currency, _units, _writing, _page, _url, _noUrl, _right, _down })
        {
            command.Add(option);
        }
    }

    public SettingsCorrection Read(ParseResult line) => new()
    {
        Name = line.GetValue(_name),
        Writer = line.GetValue(_noWriter) ? "" : line.GetValue(_writer),
        Currency = line.GetValue(_currency),
        Units = line.GetValue(_units),
        SizeWriting = Domain.Sizes.SizeWriting.Of(line.GetValue(_writing)),
        Page = PageSize.Of(line.GetValue(_page)),
        BaseUrl = line.GetValue(_noUrl) ? "" : line.GetValue(_url),
        PrinterRight = line.GetValue(_right),
        PrinterDown = line.GetValue(_down),
    };

    public static Option<string?> BaseUrl(string description) => new("--base-url")
    {
        HelpName = "URL",
        Description = description,
        CustomParser = Given.One<string?>(TryReadUrl, LinkAddress.Form),
    };

    public static Option<string?> SizeWriting(string description) => Opt.Word("--size-writing", Writings, description);

    private static Option<double?> Offset(string name, string description) => new(name)
    {
        HelpName = "MM",
        Description = description,
        CustomParser = Given.One<double?>(TryReadOffset, "millimetres from -20 to 20, such as 0.5"),
    };

    private static bool TryReadUrl(string text, out string? url) => (url = LinkAddress.IsOne(text) ? text : null) is not null;

    private static bool TryReadOffset(string text, out double? offset) => (offset =
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var read) && Math.Abs(read) <= PrinterOffset.Most
            ? read
            : null) is not null;
}
