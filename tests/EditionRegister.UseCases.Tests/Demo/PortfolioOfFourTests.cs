using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The portfolio of the demo against figures worked out by hand.</summary>
public sealed class PortfolioOfFourTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _register;
    private readonly SetSeen _set;

    public PortfolioOfFourTests()
    {
        _register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));
        _set = _register.LookAround.Sets().Single(set => set.Work.Title == "Four Tides");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Four_copies_hold_four_sheets_each()
    {
        // 3 copies and 1 A/P, each with 4 parts: 4 x 4 = 16 sheets, and every one has its copy's number.
        Assert.Equal(["1/3", "2/3", "3/3", "A/P I/I"], _set.Copies.Select(copy => _set.Work.NumberOf(copy)));
        Assert.Equal(16, _set.Copies.Sum(copy => copy.SetSheets.Count(sheet => sheet.IsIn)));
        Assert.All(_set.Copies, copy => Assert.All(copy.SetSheets, sheet => Assert.Equal(_set.Work.NumberOf(copy), sheet.Number)));
        Assert.Equal("portfolio of 4 parts, signed on the colophon; 4 of 4 copies gathered", Wording.SetsSaid.InShort(_set));
    }

    [Fact]
    public void Only_the_colophons_are_signed()
    {
        Assert.All(_set.Copies, copy => Assert.Equal(("yes", "M. Tolland, J. Averink"), (copy.Signed, copy.Signature)));
        Assert.All(Parts().SelectMany(part => part.Impressions), sheet => Assert.Equal("no", sheet.Signed));
    }

    [Fact]
    public void What_lies_in_copy_2_is_with_the_gallery_as_the_copy_is()
    {
        // The copy and its 4 sheets: 5 of the gallery's sheets are of the portfolio. The other copies and their sheets are at home: 3 x 5 = 15.
        var sheets = _set.Copies.Concat(Parts().SelectMany(part => part.Impressions.Where(sheet => sheet.InSet is not null))).ToList();

        Assert.Equal(5, sheets.Count(sheet => sheet.Where!.State == "with"));
        Assert.Equal(15, sheets.Count(sheet => sheet.Where!.State == "placed"));
        Assert.Equal(4_000, _set.Copies[1].Whereabouts[^1].Rate);
    }

    [Fact]
    public void The_graded_print_comes_out_as_reckoned_by_hand()
    {
        var work = Parts().Single(part => part.Title == "Neap");
        var pile = work.Impressions.Select(sheet => sheet with { Standing = "pulled" }).ToList();

        var proposal = Proposal.Of(pile, 4);

        // Sheets 1, 3, 4, 5: 5 4 5 5 4 lack 0 + 1 + 0 + 0 + 1 = 2 each and are the same: 4 x 2 = 8.
        // Sheet 2: 3 2 4 3 2 lacks 2 + 3 + 1 + 2 + 3 = 11 and differs by 2 + 2 + 1 + 2 + 2 = 9.
        Assert.Equal([1, 3, 4, 5], proposal.Sheets.Select(one => one.Sheet.Ordinal));
        Assert.Equal(8, proposal.Costs);
        Assert.Equal((11, 9), (proposal.Others[0].Lacks, proposal.Others[0].Differs));
    }

    [Fact]
    public void The_sheet_worked_over_still_counts_among_those_left_out_of_its_print()
    {
        var work = Parts().Single(part => part.Title == "Neap");
        var totals = EditionTotals.Of(work, work.Editions[0]);
        var made = _register.LookAround.Works().Single(one => one.Title == "Neap, at Night");

        // 5 sheets: 3 + 1 A/P numbered = 4 in the total, 1 left out; that one is the unique work's one sheet now.
        Assert.Equal((3, 4, 1), (totals.Size, totals.Total, totals.LeftOut));
        Assert.Equal(work.Impressions.Single(sheet => sheet.Standing == "left-out").ShownCode, Shown(made.WorkedOver!));
        Assert.Equal(("1/1", 1), (made.NumberOf(made.Impressions[0]), made.Impressions.Count));
        Assert.Equal(["worked-over"], made.Impressions[0].Whereabouts.Select(link => link.Kind));
        Assert.Equal("gone", work.Impressions.Single(sheet => sheet.Standing == "left-out").Where!.State);
    }

    [Fact]
    public void The_certificate_of_a_copy_lists_its_parts()
    {
        var facts = CertificateFacts.Of(_set.Work, _set.Copies[2], SizeStyle.Millimetres).ToDictionary(fact => fact.Key, fact => fact.Value);

        Assert.Equal("portfolio of 4 parts, signed on the colophon instead of the sheets", facts["set"]);
        Assert.Equal("1. Ebb, 3/3; 2. Neap, 3/3; 3. Flood, 3/3; 4. Spring Tide, 3/3", facts["parts"]);
    }

    private IReadOnlyList<Work> Parts() => [.. _set.Set.Parts.Select(part => _register.LookAround.Work(part.Work))];

    private static string Shown(WorkedOver over) => Domain.Codes.RegisterCode.TryParse(over.Code, out var code) ? code.ToString() : over.Code;
}
