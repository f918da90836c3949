using System.Globalization;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>How large an edition is said to be: a size, not sure of it, open, or not known; and the proofs stated beside it. The words stay as written.</summary>
public sealed record StatedEdition
{
    /// <summary>Shown where a size may be said in words.</summary>
    public const string Form = "75, at least 49, c. 50, open, or edition of 75 plus 10 artist's proofs";

    /// <summary>As written.</summary>
    public required string Written { get; init; }

    /// <summary>The size, where it is sure.</summary>
    public int? Size { get; init; }

    public bool IsOpen { get; init; }

    /// <summary>There is but one.</summary>
    public bool IsUnique { get; init; }

    /// <summary>at-least, at-most or about.</summary>
    public string? Hedge { get; init; }

    public int? HedgedSize { get; init; }

    /// <summary>Numberings of proofs, as many as are stated.</summary>
    public IReadOnlyList<NumberingPlan> Beside { get; init; } = [];

    /// <summary>What the words say; null where a figure, open or unknown says it plainly.</summary>
    public EditionStatement? Words { get; init; }

    /// <summary>Proofs that are stated and that the register has no kind of numbering for, in words; null where there are none.</summary>
    public string? WithoutKind { get; init; }

    /// <summary>Why it says nothing of how many there are, as the end of a sentence; null where it does.</summary>
    public string? WhyNot { get; init; }

    /// <summary>The edition itself as a numbering, where it is spoken of, and after it the proofs.</summary>
    public IReadOnlyList<NumberingPlan> Plans => IsSaid ? [Itself, .. Beside] : Beside;

    private bool IsSaid => Size is not null || IsOpen || Hedge is not null;

    // Arabic figures for the edition: common practice, as a workshop's glossary has it (imoga.org).
    private NumberingPlan Itself => new(NumberingKind.Numbered, Notation.Arabic, Size, Size is not null ? "stated" : IsOpen ? "open" : "unknown") { Hedge = Hedge, HedgedSize = HedgedSize };

    public static StatedEdition Read(string written, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(written);
        var text = written.Trim();

        return text.Length > 0 && text.All(char.IsAsciiDigit) ? OfFigure(text)
            : text is "open" ? new StatedEdition { Written = text, IsOpen = true }
            : text is "unknown" or "[unknown]" ? new StatedEdition { Written = text }
            : OfWords(text, own);
    }

    private static StatedEdition OfFigure(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var size) && size >= 1 && size <= Notation.Arabic.Largest
            ? new StatedEdition { Written = text, Size = size }
            : new StatedEdition { Written = text, WhyNot = "no edition has that size" };

    private static StatedEdition OfWords(string text, OwnWords own)
    {
        var words = Statement(text, own);
        var beside = words.Beside.Select(proofs => ProofsStated.Plan(proofs, text, own)).ToList();
        StatedEdition stated = new() { Written = text, Words = words, Beside = [.. beside.OfType<NumberingPlan>()], WithoutKind = WithoutKindOf(words, own) };

        return WhyNotOf(words, own) is { } why ? stated with { WhyNot = why }
            : words.Kind == StatementKind.Open ? OfNoSize(stated)
            : words.Hedge != SizeHedge.None ? stated with { Hedge = SaidOfNumber.HedgeOf(words.Hedge), HedgedSize = StatementSize.FigureOf(words) }
            : stated with { Size = words.Of };
    }

    // What stands where an edition is asked for need not say that it is one: 75 plus 10 A/P.
    private static EditionStatement Statement(string text, OwnWords own)
    {
        var asItStands = SheetReader.Statement(text, own);

        if (asItStands is { Kind: StatementKind.Size, Of: not null } or { Kind: StatementKind.Open } || asItStands.Hedge != SizeHedge.None)
        {
            return asItStands;
        }

        var announced = SheetReader.Statement($"edition of {text}", own);

        // II P/P, 1 B.A.T.: a count of proofs, which must not become the edition's.
        return announced.Kind == StatementKind.Size && (announced.Of is not null || announced.Hedge != SizeHedge.None) && announced.Beside.Count >= asItStands.Beside.Count ? announced : asItStands;
    }

    private static string? WithoutKindOf(EditionStatement words, OwnWords own) =>
        words.Beside.FirstOrDefault(proofs => SheetReader.KindOf(proofs.Series, own) is null) is { } unknown ? new EditionStatement { Kind = StatementKind.Proof, Series = unknown.Series }.InWords(own) : null;

    private static string? WhyNotOf(EditionStatement words, OwnWords own) =>
        words.Kind == StatementKind.Declined && words.WhyNot is { } declined ? StatementInWords.AsClause(declined)
        : words is { Kind: StatementKind.Open, Number: null } ? null
        : words.Kind != StatementKind.Size ? words.Kind == StatementKind.None ? "nothing of an edition can be read in it" : $"it speaks of one sheet, {words.InWords(own)}, and not of the edition"
        : words.Of is > 999_999 or < 1 ? "no edition has that size"
        : words.Of is null && words.Hedge == SizeHedge.None && words.Beside.Count == 0 ? "it says nothing of how many there are"
        : null;

    // The reader has one answer for all of these; only the words tell an edition without end from sheets without numbers.
    private static StatedEdition OfNoSize(StatedEdition stated) =>
        Says(stated.Written, "unique") ? stated with { Size = 1, IsUnique = true }
        : Says(stated.Written, "open") || Says(stated.Written, "unlimited") ? stated with { IsOpen = true }
        : stated;

    private static bool Says(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
