using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.People;
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
                "NumbersAreUnique", "NumbersWithinSize", "TotalsMatch", "ClosedEditionsAreAccountedFor", "PencilAgreesWithRecord", "SheetsBalance",
                "LeftOutSheetsBearNoNumber", "ReductionsAreNotReprinted", "ChainsHold", "CertificatesAgree", "ValuesAreReadable",
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
        var damaged = Damaged();

        var findings = Everything(damaged);

        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.False(string.IsNullOrWhiteSpace(finding.Message)));
    }

    private static List<Finding> Everything(Work work) => [.. Rules.All.SelectMany(rule => rule.Check(work))];

    /// <summary>Nothing in it is as the schema would have it.</summary>
    private static Work Damaged()
    {
        RecordedDate date = new("\uD800", "yesterday", "2026-02-31");
        var work = Harbour.Clean();

        return work with
        {
            Title = null,
            TitleState = "",
            MakerState = "İ",
            Year = date,
            Roles = [new(1, 99, "", -1)],
            Matrices = [new(5, 1, "", null, "", date, "", date, null)],
            Runs = [new(7, 1, int.MinValue, "", null, null, date, int.MaxValue, int.MinValue, int.MaxValue, -1, long.MinValue, 0, long.MaxValue, -1, null)],
            Editions =
            [
                new(9, 1, 0, "", "whole", -1, date, "yes", date, null,
                [
                    new(21, 1, 0, "?", "?", int.MaxValue, "", [new(1, 1, int.MinValue, "", null), new(2, 1, int.MaxValue, "open", null)]),
                    new(22, 1, 0, "numbered", "none", int.MaxValue, "open", [new(3, 1, 0, "open", null), new(4, 1, 0, "open", null)]),
                    new(23, 1, 0, "artists-proof", "roman", int.MinValue, "stated", []),
                    new(24, 1, 0, "trial", "letters", null, "stated", []),
                ]),
                new(10, 1, 0, "open", "?", null, date, "?", date, null, []),
            ],
            Impressions =
            [
                .. from numbering in new long?[] { null, 21, 22, 23, 24, 77 }
                   from number in new int?[] { null, int.MinValue, 0, 1, int.MaxValue }
                   from pencilled in new[] { null, "", "13/12", "A/P", "3/12", "\uD800" }
                   select Broken(numbering, number, pencilled, date),
            ],
            Book = new AddressBook(new Dictionary<long, Person>(), new Dictionary<long, Place> { [1] = new(1, 1, null, 1, 5, null) }),
        };
    }

    private static Impression Broken(long? numbering, int? number, string? pencilled, RecordedDate date) => new()
    {
        Id = 1,
        V = 0,
        Run = pencilled is null ? 7 : 70,
        Ordinal = -1,
        Code = "",
        Standing = number is null ? "left-out" : "",
        Fault = "",
        Numbering = numbering,
        Number = number,
        Pencilled = pencilled,
        Titled = pencilled,
        Signed = "",
        ForSale = "",
        Asking = long.MinValue,
        AskingCurrency = null,
        Inscriptions = [new(1, 0, "", "", null, null)],
        Whereabouts = [new(1, 1, 5, "", new Position("", 9, 9), new Position("placed", null, 9), date, date, -5, null), new(1, 1, 5, "found", null, new Position("gone", 1, null), date, date, null, null), new(1, 1, int.MinValue, "sold", Position.Gone, new Position("with", null, null), date, date, null, null)],
        Ownership = [new(1, 1, 5, "", Owner.Unknown, new Owner("known", null), 9, date, -1, -1, "", null), new(1, 1, 0, "sold", new Owner("known", 9), new Owner("known", 9), 9, date, null, null, "EUR", null)],
        Documents = [new(1, 1, "certificate", "", date, "valid", null, "{"), new(2, 1, "certificate", "", date, "valid", 1, null), new(3, 1, "", "", date, "", 3, "[]")],
        KeptColumns = [],
    };
}

public sealed class RulesInGermanTests() : RulesTests("de-DE");

public sealed class RulesInTurkishTests() : RulesTests("tr-TR");
