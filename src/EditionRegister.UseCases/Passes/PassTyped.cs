using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Passes;

/// <summary>What is said of a pass as a person types it; null says nothing, and an empty list that there is none.</summary>
public sealed record PassTyped
{
    /// <summary>Its counts and words; the lists of it are those typed here.</summary>
    public PassWords Words { get; init; } = new();

    /// <summary>"key=II": a matrix by its number, code or part, and the state it was in. Without a state, the one it is in now.</summary>
    public IReadOnlyList<string>? Matrices { get; init; }

    /// <summary>"vermilion=oil ink": a colour, and which ink.</summary>
    public IReadOnlyList<string>? Colours { get; init; }

    /// <summary>The ink of the only colour.</summary>
    public string? Ink { get; init; }

    /// <summary>Names or numbers from the address book.</summary>
    public IReadOnlyList<string>? People { get; init; }

    /// <summary>"slur=1", or "3" where the faults were not noted.</summary>
    public IReadOnlyList<string>? Spoiled { get; init; }

    /// <summary>"progressive=1", or "2" where the kinds were not noted.</summary>
    public IReadOnlyList<string>? HeldOut { get; init; }

    /// <summary>Places in the pile and codes: "1-4, 7KQ4-M2X3".</summary>
    public string? Sheets { get; init; }

    /// <summary>Places in the pile and codes of the sheets held out after it.</summary>
    public string? Proofs { get; init; }

    /// <exception cref="Domain.RefusedException">Something named is not there, or cannot be read.</exception>
    internal PassWords Read(Work work, PrintRun run, AddressBook book)
    {
        var spoiled = Counted(Spoiled, "slur=2");
        var heldOut = Counted(HeldOut, "progressive=1");

        return Words with
        {
            Matrices = Matrices?.Select(text => Parted(text)).Select(pair => Matrix(work, pair.Before, pair.After)).ToList() ?? Words.Matrices,
            Colours = Inked(Colours?.Select(Parted).ToList(), run),
            People = People?.Select(who => Persons.Find(book, who)).Distinct().ToList() ?? Words.People,
            Spoiled = Words.Spoiled ?? Total(spoiled),
            SpoiledBy = Named(spoiled) ?? Words.SpoiledBy,
            HeldOut = Words.HeldOut ?? Total(heldOut),
            HeldOutAs = Named(heldOut) ?? Words.HeldOutAs,
            Sheets = Sheets is null ? Words.Sheets : Found(work, run, Sheets),
            Proofs = Proofs is null ? Words.Proofs : Found(work, run, Proofs),
        };
    }

    private static (Matrix, MatrixState?) Matrix(Work work, string named, string? state)
    {
        var matrix = MatrixNamed.Find(work, named);

        return (matrix, state is null ? matrix.NewestState : MatrixNamed.State(matrix, state));
    }

    // As last time with another ink needs no colour said again.
    private IReadOnlyList<(string, string?)>? Inked(IReadOnlyList<(string Before, string? After)>? colours, PrintRun run)
    {
        if (Ink is null)
        {
            return colours?.Select(pair => (pair.Before, pair.After)).ToList() ?? Words.Colours;
        }

        var meant = colours ?? (run.Passes is [.., var last] ? last.Colours.Select(colour => (Before: colour.Colour, After: colour.Ink)).ToList() : []);

        return meant is [var only] ? [(only.Before, Ink)] : throw PassTypedRefusals.WhichInk(Ink, meant.Count);
    }

    private static (string Before, string? After) Parted(string text) =>
        text.IndexOf('=', StringComparison.Ordinal) is > 0 and var at ? (text[..at].Trim(), text[(at + 1)..].Trim() is { Length: > 0 } after ? after : null) : (text.Trim(), null);

    private static List<(string? Word, int Sheets)>? Counted(IReadOnlyList<string>? texts, string form) => texts?.Select(text =>
    {
        var (before, after) = Parted(text);
        var (word, count) = after is null ? (null, before) : (before, after);

        return int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var sheets) && (word is null || sheets > 0) ? (word, sheets) : throw PassTypedRefusals.NoCount(text, form);
    }).ToList();

    private static int? Total(List<(string? Word, int Sheets)>? counts) => counts is { Count: > 0 } ? counts.Sum(one => one.Sheets) : null;

    private static List<(string, int)>? Named(List<(string? Word, int Sheets)>? counts) =>
        counts?.Where(one => one.Word is not null).GroupBy(one => one.Word!).Select(same => (same.Key, same.Sum(one => one.Sheets))).ToList();

    private static List<Impression> Found(Work work, PrintRun run, string typed)
    {
        List<Impression> found = [];

        foreach (var range in NumberRanges.Read(typed))
        {
            var before = found.Count;
            found.AddRange(range.Code is { } code
                ? work.Impressions.Where(sheet => sheet.Code == code.Text)
                : work.Impressions.Where(sheet => range.Kind is null && sheet.Run == run.Id && sheet.Ordinal >= range.From && sheet.Ordinal <= range.To));

            if (found.Count - before != (range.Code is null ? range.To - range.From + 1 : 1))
            {
                throw ImpressionRefusals.NotInPile(range.ToString(), string.Create(CultureInfo.InvariantCulture, $"run {run.Ordinal} of “{work.ShownTitle}”"));
            }
        }

        return found.GroupBy(sheet => sheet.Id).FirstOrDefault(same => same.Count() > 1) is { } twice ? throw ImpressionRefusals.Twice(twice.First().ShownCode) : found;
    }
}
