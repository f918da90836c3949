using EditionRegister.Domain.Sizes;
using EditionRegister.Domain;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.Domain.Chains;

namespace EditionRegister.UseCases.Tests.Editions;

/// <summary>Later editions, restrikes and posthumous ones are facts, and disclosed; a division is what was agreed, beside what was done.</summary>
public sealed class RanksAndDivisionTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public RanksAndDivisionTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(null, false, false)]
    [InlineData("first", false, false)]
    [InlineData(null, true, true)]
    [InlineData("later", false, true)]
    [InlineData("restrike", false, true)]
    [InlineData("posthumous", false, true)]
    public void A_second_edition_says_that_it_is_one(string? rank, bool second, bool isTaken)
    {
        NewEdition plan = new() { Rank = rank, IsSecond = second, Numberings = [NumberingPlan.Read("1-3")] };

        var refused = Record.Exception(() => _register.DeclareEdition.Run(SmallEdition.Work, plan)) as RefusedException;

        Assert.Equal(isTaken ? null : "edition-stands-already", refused?.Name);
    }

    // The first is closed with 4 + 1; the second has 3: its certificate says what was before it.
    [Fact]
    public void A_later_edition_is_printed_after_the_first_is_closed_and_says_what_was_before_it()
    {
        _register.StateMatrixFate.Run(SmallEdition.Work, null, "kept-uncancelled", RecordedDate.Read("2026-02-20"), null, correct: false);
        _register.CloseEdition.Run(SmallEdition.Edition);
        var later = _register.DeclareEdition.Run(SmallEdition.Work, new NewEdition { Rank = "later", Numberings = [NumberingPlan.Read("1-3")] });

        var codes = _register.RecordPrintRun.Run(SmallEdition.Work, new NewPrintRun { Pile = 3, Printed = RecordedDate.Read("2026-05-01"), Paper = "hosho" });
        _register.SortPulls.Run(new ImpressionChoice { Work = SmallEdition.Work, Run = 2, Pile = "1-3" }, "kept");
        _register.GiveNumbers.AsPiled(later, null, null);

        var (work, _) = _register.LookAround.Edition(later);
        var facts = CertificateFacts.Of(work, work.Impressions.First(sheet => sheet.Id == codes[0]), SizeStyle.Millimetres);
        Assert.Contains(new CertificateFact("rank", "later edition; before it edition 1, 4 impressions"), facts);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Sheets_of_a_restrike_are_given_only_its_own_numbers_as_piled()
    {
        _register.DeclareEdition.Run(SmallEdition.Work, new NewEdition { Rank = "restrike", Numberings = [NumberingPlan.Read("1-2")] });
        _register.RecordPrintRun.Run(SmallEdition.Work, new NewPrintRun { Purpose = "restrike", Pile = 2, Printed = RecordedDate.Read("2026-05-01") });
        _register.SortPulls.Run(new ImpressionChoice { Work = SmallEdition.Work, Run = 2, Pile = "1-2" }, "kept");
        _register.GiveNumbers.TakeBack(SmallEdition.Numbers("4"));

        _register.GiveNumbers.AsPiled(SmallEdition.Edition, null, null);
        _register.GiveNumbers.AsPiled(2, null, null);

        var work = _register.LookAround.Work(SmallEdition.Work);
        Assert.All(work.Impressions.Where(sheet => sheet.Number is not null), sheet => Assert.Equal(work.RunOf(sheet)!.Ordinal, work.EditionOf(sheet)!.Ordinal));
        Assert.Empty(_register.CheckRegister.Run());
    }

    // 1-2 for the maker, 3-4 for the gallery. 1 is sold to a friend, 3 goes to the gallery, 4 to the friend: one note, and no contradiction.
    [Fact]
    public void Where_a_sheet_went_to_another_than_agreed_is_a_note_and_never_more()
    {
        _register.RecordPerson.Run(new People.NewPerson { Name = "Ada Brook" });
        _register.DivideEdition.Run(SmallEdition.Edition, "1-2", "Mira Tolland");
        _register.DivideEdition.Run(SmallEdition.Edition, "3-4", "Quay Gallery", RecordedDate.Read("2026-02-02"));
        var four = _register.Sheet(4).ShownCode;

        Sell("1, 4", "Ada Brook");
        Sell("3", "Quay Gallery");

        var finding = Assert.Single(_register.CheckRegister.Run());
        Assert.Equal((Severity.Note, $"4/4 of “Harbour” ({four}) was agreed for Quay Gallery, and went first to Ada Brook."), (finding.Severity, finding.Message));
        var (work, edition) = _register.LookAround.Edition(SmallEdition.Edition);
        Assert.Equal(
            [("Mira Tolland", "1/4 and 2/4", "1 theirs now; 1 belongs to Ada Brook"), ("Quay Gallery", "3/4 and 4/4", "1 theirs now; 1 belongs to Ada Brook")],
            DivisionShown.Of(work, edition).Select(share => (share.Person, share.Numbers, share.Now)));
    }

    [Fact]
    public void A_share_is_taken_back_whole()
    {
        _register.DivideEdition.Run(SmallEdition.Edition, "1, 3-4, A/P I", "Quay Gallery");

        var count = _register.DivideEdition.TakeBack(SmallEdition.Edition, "3-4");

        Assert.Equal(2, count);
        Assert.Equal([(1, 1), (1, 1)], _register.LookAround.Edition(SmallEdition.Edition).Edition.Entitlements.Select(one => (one.First, one.Last)));
    }

    private void Sell(string numbers, string buyer) =>
        _register.SellImpressions.Run(SmallEdition.Numbers(numbers), new SalePeople(buyer), new Sale { Date = RecordedDate.Read("2026-03-01") });
}
