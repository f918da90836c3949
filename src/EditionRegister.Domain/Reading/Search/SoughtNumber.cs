using System.Globalization;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>A number that is asked for: A/P 2, 3/12, B.A.T. What was not typed does not matter.</summary>
/// <param name="Series">The word of the kind of numbering, or the words of a proof that no numbering is kept of.</param>
/// <param name="Kind">The kind of numbering, or null where there is none of that name.</param>
/// <param name="Notation">Null finds every notation.</param>
/// <param name="Number">The place in the numbering; null finds every one.</param>
/// <param name="Of">The size beside it; null finds every size.</param>
public sealed record SoughtNumber(string Series, NumberingKind? Kind, Notation? Notation, int? Number, int? Of)
{
    /// <summary>What else the same pencil could mean: a single letter may be a roman numeral.</summary>
    public SoughtNumber? Or { get; init; }

    /// <summary>The readings of it, one or two.</summary>
    public IEnumerable<SoughtNumber> Readings => Or is null ? [this] : [this, Or];

    /// <summary>Of a pencil read whole. Figures without a size find the second proof however it is numbered; beside a size they are a transcription.</summary>
    public static SoughtNumber From(PencilledNumber read)
    {
        ArgumentNullException.ThrowIfNull(read);

        return One(read) with { Or = read.OtherReading is { } other ? One(other) : null };
    }

    /// <summary>Whether one of these numbers is asked for.</summary>
    public bool Fits(in NumbersThere there) => Means(there) || Or?.Means(there) is true;

    /// <summary>Whether a place of a numbering is asked for.</summary>
    public bool Fits(Numbering numbering, int ordinal) => Fits(NumbersThere.In(numbering, ordinal, ordinal));

    /// <summary>Whether a sheet is asked for: by the number given to it, by what is pencilled on it, or by what an inscription says.</summary>
    public bool Fits(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        var numbering = work.NumberingOf(sheet);

        return (numbering is not null && sheet.Number is { } number && Fits(numbering, number))
            || (NumbersThere.OnPencil(sheet.PencilSays, sheet.Pencilled, numbering?.Notation, work.OwnWords) is { } pencil && Fits(pencil))
            || sheet.Inscriptions.Any(inscription => NumbersThere.Said(inscription.Says) is { } said && Fits(said));
    }

    /// <summary>number 3 of 12, artist's proof II of V, bon à tirer.</summary>
    public override string ToString()
    {
        var name = Kind == NumberingKind.Numbered ? "number" : Kind?.Name ?? Series;

        return Number is { } number ? $"{name} {Spelled(number)}{(Of is { } size ? $" of {Spelled(size)}" : "")}"
            : Of is { } of ? $"{name} of {Spelled(of)}"
            : name;
    }

    private static SoughtNumber One(PencilledNumber read) => new(
        read.Kind.Word, read.Kind, read.Notation == Notation.None || (read.Notation == Notation.Arabic && read.Of is null) ? null : read.Notation, read.Number, read.Of);

    private bool Means(in NumbersThere there) =>
        there.Series == Series
        && (Number is not { } number || (there.From <= number && number <= there.To))
        && (Notation is null || there.Notation is null || there.Notation == Notation)
        && (Of is null || there.Size == Of);

    private string Spelled(int number) =>
        Notation is { } notation && number <= notation.Largest ? notation.Write(number) : number.ToString(CultureInfo.InvariantCulture);
}
