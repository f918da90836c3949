using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class ValuesAreReadableTests
{
    private static readonly Work Clean = Harbour.Clean();
    private readonly string _seven = $"“Harbour” 7/12 ({Clean.The("7/12").ShownCode})";

    [Fact]
    public void Words_that_are_not_in_their_list()
    {
        Assert.Equal(["Fate of “Harbour”, block is “eaten”, which is none of undecided, cut-away-in-printing, cancelled, kept-uncancelled, regrained-or-reclaimed, cut-up, lost, given-away and unknown."], Messages(Clean.WithMatrix(matrix => matrix with { Fate = "eaten" })));
        Assert.Equal(["Purpose of “Harbour”, print run 1 is “EDITION”, which is none of edition, proofing, restrike and unknown."], Messages(Clean.WithRun(run => run with { Purpose = "EDITION" })));
        Assert.Equal(["Extent of “Harbour” is “ours”, which is none of whole, partly-known and someone-elses."], Messages(Clean.WithEdition(edition => edition with { Extent = "ours" })));
        Assert.Equal([$"Standing of {_seven} is “keep”, which is none of pulled, kept, spare, left-out and held-out."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Standing = "keep" })));
        Assert.Equal([$"A link in the whereabouts of {_seven} is of the kind “sold”, which the register does not know."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { Kind = "sold" }] })));
        Assert.Equal(["Notation of “Harbour”, numbered edition is “greek”, which is none of arabic, roman, letters and none."], Messages(Clean.WithNumbering("numbered", numbering => numbering with { NotationWord = "greek" }) with { Impressions = [] }));
        Assert.Equal(["Fate of 4/12 of “Harbour”, numbered edition is “gone”, which is none of open, never-printed, void, elsewhere and unknown."], Messages(Clean.WithNumber("numbered", 4, "gone")));
    }

    [Fact]
    public void Words_that_are_missing()
    {
        Assert.Equal(["Fate of “Harbour”, block is missing."], Messages(Clean.WithMatrix(matrix => matrix with { Fate = "" })));
        Assert.Equal(["Kind of matrix of “Harbour”, matrix is missing."], Messages(Clean.WithMatrix(matrix => matrix with { What = "" })));
        Assert.Equal([$"Signed of {_seven} is missing."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Signed = "" })));
        Assert.Equal([$"The kind of a link in the whereabouts of {_seven} is missing."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Whereabouts = [sheet.Whereabouts[0] with { Kind = "" }] })));
        Assert.Equal(["Code of “Harbour” 7/12 () is missing."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Code = "" })));
    }

    [Fact]
    public void Days_that_are_no_days()
    {
        Assert.Equal(["The year of “Harbour” (2026) is bounded by 2026-01-01 and 2026-02-31, and one of them is no day."], Messages(Clean with { Year = new RecordedDate("2026", "2026-01-01", "2026-02-31") }));
        Assert.Equal(["The year of “Harbour” (2026) ends 2025-12-31, before it begins 2026-01-01."], Messages(Clean with { Year = new RecordedDate("2026", "2026-01-01", "2025-12-31") }));
        Assert.Equal(["The year of “Harbour” is bounded by 2026-01-01, and says nothing itself."], Messages(Clean with { Year = new RecordedDate(null, "2026-01-01", null) }));
    }

    [Fact]
    public void Codes_and_figures_that_cannot_be()
    {
        var code = Clean.The("7/12").Code;
        var wrong = code[..7] + (code[7] == 'X' ? 'Y' : 'X');

        Assert.Equal([$"“{wrong}”, the code of “Harbour” 7/12 ({wrong}), is no register code: a character is wrong or missing."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Code = wrong })));
        Assert.Equal(["The size of “Harbour”, artist's proof is 4000, more than can be written in roman numerals."], Messages(Clean.WithNumbering("artists-proof", numbering => numbering with { Size = 4_000 }) with { Impressions = [] }));
        Assert.Equal(["The count of sheets spoiled of “Harbour”, print run 1 is -2, less than none."], Messages(Clean.WithRun(run => run with { Spoiled = -2 })));
        Assert.Equal(["The width of the image of “Harbour”, print run 1 is 0 micrometres, and a length is more than nothing."], Messages(Clean.WithRun(run => run with { ImageWidth = 0 })));
        Assert.Equal([$"The asking price of {_seven} is in “”, which is no currency."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Asking = 5 })));
    }

    [Fact]
    public void Things_that_are_not_there()
    {
        Assert.Equal([$"{_seven} was pulled in print run 70, which “Harbour” does not have."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Run = 70 })));
        Assert.Equal([$"“Harbour” 7/12 ({Clean.The("7/12").ShownCode}) has a place in numbering 77, which “Harbour” does not have."], Messages(Clean.WithSheet("7/12", sheet => sheet with { Numbering = 77 })));
        Assert.Equal(["The maker of “Harbour” is person 99, whom the register does not have."], Messages(Clean with { Roles = [new(1, 99, "maker", 1)] }));
        Assert.Equal(["The maker of “Harbour” is recorded as named, and nobody is named."], Messages(Clean with { Roles = [] }));
        Assert.Equal(["The maker of “Harbour” is recorded as unknown, and somebody is named."], Messages(Clean with { MakerState = "unknown" }));
    }

    private static IEnumerable<string> Messages(Work work) =>
        FindingsOf.Rule("ValuesAreReadable", work).Select(finding => finding.Replace("Contradiction: ", "", StringComparison.Ordinal));
}
