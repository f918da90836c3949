using CsCheck;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>What holds of every date that is read, whatever the text.</summary>
public sealed class DateReaderGeneratedTests
{
    private static readonly string[] Words =
    [
        "c. ", "ca. ", "about ", "possibly ", "?", "~", "1926", "1785", "90", "5", "607", "12", "31", "9999", "1000", " - ", "-", "–", "/", " to ", " or ", " and ", ", ", "; ", ". ", " (", ") ", "[", "]",
        "before ", "after ", "no later than ", " or later", " or earlier", "between ", "early ", "mid-", "late ", "first half of the ", "19th", " century", "1st", "XIXe siècle", "siglo XIX", "1960s", "1800s", "'20s", "BC", " AD",
        "17 ", "February ", "May ", "30 ", "spring ", "winter ", "published ", "printed ", "negative ", "printed later", "cast after a ", "original ", "n.d.", "undated", " ± 10", "+/- 100 ", "197-", "18--", "MCMXXVI", "A.H. 1065 ",
        "Jahr ", "um ", "vers l'", "1.3.2026", "9/10/2005", "present", "XXXX", "19XX", "-0049", "..", "%", "\n", "é", "Ⅻ", "١٩٢٦", "\ud800",
    ];

    private static readonly Gen<string> Pieces = Gen.Int[0, Words.Length - 1].Select(place => Words[place]);

    private static readonly Gen<string> Texts = Gen.OneOf(
        Pieces.Array[1, 12].Select(string.Concat),
        Gen.String[Gen.Char["0123456789-/X?~%.,;()[] cabdefstuvBCAD'"], 0, 24],
        Gen.String);

    [Fact]
    public void Every_museum_text_is_read_into_EDTF_that_is_read_back_the_same()
    {
        Assert.All(MuseumDates.Texts, text => Assert.Null(Fault(text)));
    }

    [Fact]
    public void Every_generated_text_is_read_into_EDTF_that_is_read_back_the_same()
    {
        Texts.Sample(text => Fault(text) is { } fault ? throw new InvalidOperationException($"{fault}: {text}") : true, iter: 10_000);
    }

    [Fact]
    public void Long_texts_are_read_or_left_without_a_fault()
    {
        Gen.Select(Pieces, Pieces, Texts).Sample(
            (one, other, random) => Fault(Repeated(one + other + random)) is { } fault ? throw new InvalidOperationException($"{fault}: {one}{other}{random}") : true,
            iter: 20);
    }

    private static string Repeated(string text) => string.Concat(Enumerable.Repeat(text, 65_536 / Math.Max(1, text.Length)));

    /// <summary>What of the promises does not hold, or null.</summary>
    private static string? Fault(string text)
    {
        if (DateReader.Read(text) is not { } read)
        {
            return DateUnread.Why(text) is "" ? "no reason" : null;
        }

        return ReadDateInWords.Of(read, text).Length == 0 ? "no words"
            : read.Earliest > read.Latest || read.EarliestDay > read.LatestDay || read.Whole.Earliest > read.Whole.Latest ? "ends before it begins"
            : read.EarliestDay is { } first && first.Year != read.Earliest ? "the first day is of another year"
            : read.LatestDay is { } last && last.Year != read.Latest ? "the last day is of another year"
            : read.Others.Select(one => one.Edtf).Append(read.Edtf).OfType<string>().Any(edtf => !Edtf.TryParse(edtf, out _)) ? "no EDTF"
            : read.Edtf is { } form && form != text.Trim() && form.Contains('/', StringComparison.Ordinal) && form.Contains('X', StringComparison.Ordinal) ? "EDTF of level 2"
            : read.Edtf is not null && DateReader.Read(read.Edtf) is var again && (again?.Edtf, again?.Earliest, again?.Latest) != (read.Edtf, read.Earliest, read.Latest) ? "read back otherwise"
            : null;
    }
}
