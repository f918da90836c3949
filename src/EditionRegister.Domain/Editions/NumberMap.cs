using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>An edition at one glance: where every number is, the sheets beside them, and what it all comes to.</summary>
public sealed record NumberMap
{
    public required Edition Edition { get; init; }

    public required string Heading { get; init; }

    public required IReadOnlyList<MapNumbering> Numberings { get; init; }

    /// <summary>Sheets of the work without a number: spare, left out, held out, kept or not yet sorted.</summary>
    public required IReadOnlyList<MapCell> Beside { get; init; }

    public required IReadOnlyList<MapTotal> Totals { get; init; }

    /// <summary>Who is to have which numbers, as agreed, and whose they are now.</summary>
    public required IReadOnlyList<ShareOfEdition> Division { get; init; }

    /// <summary>Only the letters that occur, in a fixed order.</summary>
    public required IReadOnlyList<MapLetter> Legend { get; init; }

    public static NumberMap Of(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        return NumberMapMaker.Make(work, edition);
    }
}

/// <summary>One number of an edition, or one sheet beside it: its letter of the legend, and in words where it is.</summary>
/// <param name="Ordinal">The number's place in its numbering; null for a sheet beside the numbers.</param>
/// <param name="Spelled">As it is to be pencilled, or the standing of a sheet beside the numbers.</param>
/// <param name="Letter">One letter of the legend.</param>
/// <param name="Sheet">The impression that has the number, or null.</param>
/// <param name="Where">In words, for the keeper of the register.</param>
public sealed record MapCell(int? Ordinal, string Spelled, char Letter, Impression? Sheet, string Where);

/// <summary>One numbering of the edition with a cell for every number; without an end where its size is open or unknown.</summary>
public sealed record MapNumbering(Numbering Numbering, string Heading, string Span, IReadOnlyList<MapCell> Cells);

/// <summary>What one letter of the map means.</summary>
public sealed record MapLetter(char Letter, string Meaning);

/// <summary>One line under the map.</summary>
public sealed record MapTotal(string Label, string Value);
