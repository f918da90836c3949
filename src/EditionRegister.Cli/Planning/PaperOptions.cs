using System.CommandLine;
using EditionRegister.Domain.Planning;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Cli;

/// <summary>The full sheets there are to buy, and the pieces to print on.</summary>
internal sealed class PaperOptions
{
    private static readonly string[] Sides = ["long", "short"];

    private readonly Option<RecordedSize?> _paper = Opt.Size("--paper", SizePart.Sheet, "The full sheet, height first: 560x760 in millimetres, or in words such as 22 x 30 in.");
    private readonly Option<RecordedSize?> _piece = Opt.Size("--piece", SizePart.Sheet, "The piece to print on: 280x380.");
    private readonly Option<string?> _grain = Opt.Word("--grain", Sides, "Along which side of a piece the grain is to run. Else either.");
    private readonly Option<string?> _sheetGrain = Opt.Word("--sheet-grain", Sides, "Along which side of the full sheet it runs. Else long.");
    private readonly Option<string?> _trim = Opt.Text("--trim", "MM", "What is cut off each edge of the full sheet, in millimetres.");
    private readonly Option<bool> _keepDeckle = Opt.Flag("--keep-deckle", "Every piece is to keep a deckle edge.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _paper, _piece, _grain, _sheetGrain, _trim, _keepDeckle })
        {
            command.Add(option);
        }
    }

    public bool KeepsDeckle(ParseResult line) => line.GetValue(_keepDeckle);

    /// <summary>Null where no paper is spoken of.</summary>
    public PaperPieces? Read(ParseResult line)
    {
        var (paper, piece) = (line.GetValue(_paper), line.GetValue(_piece));

        if ((paper is null) != (piece is null))
        {
            throw new WrongUsageException("--paper and --piece belong together: the full sheet, and what is printed on.");
        }

        return paper is null ? null
            : PaperPieces.Of(paper.Size, piece!.Size, line.GetValue(_sheetGrain) ?? "long", line.GetValue(_grain), Trim(line.GetValue(_trim)), KeepsDeckle(line));
    }

    private static long Trim(string? typed) => typed is null ? 0
        : Length.TryParseMillimetres(typed, out var trim) ? trim.Micrometres
        : throw new WrongUsageException($"--trim takes a length such as {Length.Form}, and “{typed}” is none.");
}
