using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>A sheet's number as somebody wrote it down, read: what can be given to the sheet, and what the text says beside it. The text stays as written.</summary>
public sealed record NumberOnSheet
{
    public required string Written { get; init; }

    /// <summary>The number that can be given; null where none can, and <see cref="WhyNot"/> says why.</summary>
    public PencilledNumber? Number { get; init; }

    /// <summary>What the words say; null where the number is plain, or plainly impossible.</summary>
    public EditionStatement? Words { get; init; }

    /// <summary>Plain and impossible: 13/12.</summary>
    public bool IsImpossible { get; init; }

    /// <summary>at-least, at-most or about: the size beside the number is not sure.</summary>
    public string? Hedge { get; init; }

    public int? HedgedSize { get; init; }

    /// <summary>How many the edition has, where the words say that beside a proof: AP/160.</summary>
    public int? EditionSize { get; init; }

    /// <summary>The words say that the edition has no end: 5/unlimited.</summary>
    public bool IsOpen => Words is { Kind: StatementKind.Open };

    /// <summary>second state of three; null where the text names no state.</summary>
    public string? State => Words?.StateInWords();

    /// <summary>Why no number can be given, as the end of a sentence; null where one can.</summary>
    public string? WhyNot { get; init; }

    public static NumberOnSheet Read(string written, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(written);
        var text = written.Trim();

        return PencilledNumber.TryParse(text, null, own, out var plain, out var why) ? new NumberOnSheet { Written = text, Number = plain }
            : why == PencilReading.OutOfRange ? new NumberOnSheet { Written = text, IsImpossible = true, WhyNot = "no sheet can have this number" }
            : InWords(text, own);
    }

    private static NumberOnSheet InWords(string text, OwnWords own)
    {
        var words = SheetReader.Statement(text, own);
        var said = SaidOfNumber.Of(words);
        var number = said?.AsNumber(own);

        return new NumberOnSheet
        {
            Written = text,
            Words = words,
            Number = number,
            Hedge = number?.Number is null ? null : said!.Hedge,
            HedgedSize = number?.Number is null || said!.Hedge is null ? null : said.Size,
            EditionSize = number is not null && words.Hedge == SizeHedge.None && StatementSize.IsOfTheEdition(words) ? words.Of : null,
            WhyNot = number is null ? Why(words, own) : null,
        };
    }

    private static string Why(EditionStatement words, OwnWords own) => words.Kind switch
    {
        StatementKind.Declined when words.WhyNot is { } why => StatementInWords.AsClause(why),
        StatementKind.Proof when words.Series == "proof" => "it says that it is a proof, and not of which kind",
        StatementKind.Proof when SheetReader.KindOf(words.Series, own) is null => $"the register has no kind of numbering for {new EditionStatement { Kind = StatementKind.Proof, Series = words.Series }.InWords(own)}",
        StatementKind.Size => "it says how many there are, and not which this is",
        StatementKind.State => "it names a state, and no number",
        StatementKind.Numbered or StatementKind.Proof when words.NumberIsDoubted => "a question mark stands beside the number",
        StatementKind.Open => "it says that there is no number",
        StatementKind.Numbered or StatementKind.Proof => "no sheet can have this number",
        _ => "no number can be read in it",
    };
}
