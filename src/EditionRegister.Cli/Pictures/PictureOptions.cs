using System.CommandLine;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Cli;

/// <summary>The options that say what a picture shows.</summary>
internal sealed class PictureOptions
{
    private readonly Option<string?> _sheet = Opt.Text("--sheet", "CODE", "The register code of the sheet it shows.");
    private readonly Option<long?> _edition = Opt.Id("--edition", "an edition", "The edition it stands for.");
    private readonly Option<long?> _matrix = Opt.Id("--matrix", "a matrix", "The block, plate, stone or screen it shows.");

    public void AddTo(Command command)
    {
        command.Add(_sheet);
        command.Add(_edition);
        command.Add(_matrix);
    }

    /// <summary>Null where none of them was given.</summary>
    public PictureOf? Read(ParseResult line)
    {
        PictureOf of = new(line.GetValue(_sheet), line.GetValue(_edition), line.GetValue(_matrix));

        return of == new PictureOf() ? null : of;
    }
}
