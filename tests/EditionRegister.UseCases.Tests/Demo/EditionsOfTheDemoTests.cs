using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The varied edition and the estate's restrike, against figures worked out by hand.</summary>
public sealed class EditionsOfTheDemoTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _register;

    public EditionsOfTheDemoTests() => _register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));

    public void Dispose() => _folder.Dispose();

    // 7 sheets started - 1 spoiled = 6 impressions, all kept and numbered 1/6 to 6/6; 5 variants, as the two of fog are alike;
    // 5 numbers for the maker + 1 for the workshop = 6, and none has changed hands.
    [Fact]
    public void Six_weathers_are_six_impressions_of_five_variants()
    {
        var (work, edition) = Of("Six Weathers");

        Assert.Equal((7, 1, 6), (work.Runs[0].Started, work.Runs[0].Spoiled, work.Impressions.Count));
        Assert.Equal(("varied", 6, 6), (edition.Kind, edition.Size, edition.Total));
        Assert.Equal(
            ["dawn: ochre wiped into grey", "noon: blue, wiped clean", "squall: blue-black, left heavy", "fog: grey, plate tone throughout", "fog: grey, plate tone throughout", "dusk: ochre rolled over blue"],
            work.Impressions.OrderBy(sheet => sheet.Number).Select(sheet => sheet.Variant));
        Assert.Equal(5, work.Impressions.Select(sheet => sheet.Variant).Distinct().Count());
        Assert.Equal(
            [("1/6 to 5/6", "Mira Tolland", "5 theirs now"), ("6/6", "Saltmarsh Print Studio", "1 belongs to Mira Tolland")],
            DivisionShown.Of(work, edition).Select(share => (share.Numbers, share.Person, share.Now)));
    }

    // 2 sheets started, none spoiled: two unique impressions, 1/1 each; the second is the ghost of the first.
    [Fact]
    public void Undertow_is_two_unique_prints_one_the_ghost_of_the_other()
    {
        var (work, _) = Of("Undertow");

        Assert.Equal([("unique", 1), ("unique", 1)], work.Editions.Select(edition => (edition.Kind, edition.Size ?? 0)));
        Assert.Equal($"{work.Impressions[0].ShownCode}, 10 October 2026", SheetText.GhostOf(work, work.Impressions[1]));
        Assert.Equal(work.Impressions[1].ShownCode, SheetText.Ghosts(work, work.Impressions[0]));
    }

    // 12 sheets started - 1 spoiled = 11 impressions = 10 numbered + 1 spare; before them 50 of somebody else's, none of them here.
    [Fact]
    public void The_ferry_steps_are_ten_posthumous_impressions_after_fifty()
    {
        var (work, _) = Of("The Ferry Steps");

        Assert.Equal((12, 1, 11, 1), (work.Runs[0].Started, work.Runs[0].Spoiled, work.Impressions.Count, work.Impressions.Count(sheet => sheet.Standing == "spare")));
        Assert.Equal([("someone-elses", 50), ("whole", 10)], work.Editions.Select(one => (one.Extent, one.Size ?? 0)));
        Assert.All(work.Impressions, sheet => Assert.Equal("Estate of Aldwin Ferrowby", work.Book.NameOf(sheet.Whose!.Person)));
        var facts = CertificateFacts.Of(work, work.Impressions.First(sheet => sheet.Number == 1), SizeStyle.Millimetres).ToDictionary(fact => fact.Key, fact => fact.Value);
        Assert.Equal("posthumous edition; before it edition 1, 50 impressions", facts["rank"]);
        Assert.Equal(("limited to 10 impressions, numbered 1/10 to 10/10", "10 impressions in all"), (facts["edition"], facts["total"]));
        Assert.Equal(("printed after the artist's death", "cotton rag, 300 g/m²", "15 to 16 October 2026"), (facts["posthumous"], facts["paper"], facts["printed"]));
        Assert.Equal(("plate cancelled (1962)", "Estate of Aldwin Ferrowby"), (facts["matrix-fate"], facts["estate"]));
    }

    private (Work Work, Edition Edition) Of(string title)
    {
        var work = _register.LookAround.Works().Single(one => one.Title == title);

        return (work, work.Editions[^1]);
    }
}
