using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class RulesTests(string culture = "") : InCulture(culture)
{
    [Fact]
    public void A_clean_edition_has_no_findings()
    {
        Assert.Empty(Everything(Harbour.Clean()));
    }

    // Permanent: accepted findings are kept under these names.
    [Fact]
    public void Names_of_rules_never_change()
    {
        Assert.Equal(
            [
                "NumbersAreUnique", "NumbersWithinSize", "TotalsMatch", "ClosedEditionsAreAccountedFor", "PencilAgreesWithRecord",
                "InscriptionsAgreeWithRecord", "SheetsBalance", "PassesBalance", "PassesFollow", "PassUsesMatrixAsItWas", "LeftOutSheetsBearNoNumber",
                "ReductionsAreNotReprinted", "ChainsHold", "EntitlementsAreKept", "GhostsFollowTheirPrints", "ReplacedSheetsBearNoNumber",
                "ShortEditionsSaySo", "RanksFitThePrinting", "ReservedSheetsAreStillToBeHad", "CertificatesAgree", "SetsAreWhole",
                "WorkedOverSheetsAreOnePaper", "StockTakesAgree", "ConditionsAreKnownWhenLent", "DamageOnTheWayIsTakenUp", "SizesAgree", "ValuesAreReadable",
            ],
            Rules.All.Select(rule => rule.Name));
        Assert.All(Rules.All, rule => Assert.EndsWith(".", rule.Sentence));
        Assert.All(Rules.All, rule => Assert.Equal(rule.GetType().Name, rule.Name));
    }

    [Fact]
    public void Two_numberings_of_one_kind_stand_side_by_side()
    {
        var work = Harbour.Clean()
            .WithEdition(edition => edition with { Numberings = [.. edition.Numberings, Harbour.Numbers(24, 4, "numbered", "roman", 2)] })
            .With(Harbour.Sheet(118, 18) with { Numbering = 24, Number = 1, Pencilled = "I/II" })
            .With(Harbour.Sheet(119, 19) with { Numbering = 24, Number = 2, Pencilled = "II/II" })
            .WithRun(run => run with { Started = 22 });

        Assert.Empty(Everything(work));
    }

    // A partly known edition and somebody else's: most numbers are not ours to know. Common practice, no source.
    [Theory]
    [InlineData("partly-known")]
    [InlineData("someone-elses")]
    public void What_is_not_ours_to_know_is_no_finding(string extent)
    {
        var work = Harbour.Clean();
        var held = work with
        {
            Matrices = [],
            Runs = [work.Runs[0] with { Purpose = "unknown", Printed = RecordedDate.None, Started = null, Spoiled = null, Unused = null, HeldOut = null }],
            Editions =
            [
                work.Editions[0] with
                {
                    Extent = extent,
                    Closed = "unknown",
                    Numberings = [new(21, 1, 1, "numbered", "arabic", 50, "stated", [new(1, 1, 3, "open", null)]), new(22, 1, 2, "artists-proof", "roman", null, "unknown", [new(2, 1, 2, "open", null)])],
                },
            ],
            Impressions =
            [
                Harbour.Sheet(201, 1) with { Numbering = 21, Number = 3, Pencilled = "3/50" },
                Harbour.Sheet(202, 2) with { Numbering = 22, Number = 2, Pencilled = "A/P II/V" },
                Harbour.Sheet(203, 3) with { Pencilled = null },
            ],
        };

        Assert.Empty(Everything(held));
    }

    [Fact]
    public void Counts_and_dates_that_nobody_knows_are_no_finding()
    {
        var work = Harbour.Clean()
            .WithRun(run => run with { Started = null, Spoiled = null, Unused = null, HeldOut = null, Printed = RecordedDate.None })
            .WithMatrix(matrix => matrix with { Fate = "unknown", FateDate = RecordedDate.Read("some time before the move") })
            .WithNumber("numbered", 4, "unknown")
            .Without("4/12");

        Assert.Empty(Everything(work));
    }

    [Fact]
    public void Damage_is_told_and_never_thrown()
    {
        var findings = Everything(Damage.Everywhere());

        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.False(string.IsNullOrWhiteSpace(finding.Message)));
    }

    private static List<Finding> Everything(Work work) => [.. Rules.All.SelectMany(rule => rule.Check(work))];
}

public sealed class RulesInGermanTests() : RulesTests("de-DE");

public sealed class RulesInTurkishTests() : RulesTests("tr-TR");
