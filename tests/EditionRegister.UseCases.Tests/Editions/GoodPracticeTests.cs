using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Words;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Editions;

/// <summary>What good studios do every day, and a check must leave alone. Common practice, no source, but where one is named.</summary>
public sealed class GoodPracticeTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public GoodPracticeTests()
    {
        _register = _temp.Register;
        _register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        _register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        _register.RecordPlace.Run("Studio › Wall");
        _register.RecordWork.Run(new NewWork { Title = "Weir" }, ["Mira Tolland"]);
    }

    public void Dispose() => _temp.Dispose();

    // "100 + 10 AP = 110 images": workshop glossaries.
    [Fact]
    public void An_edition_of_a_hundred_with_ten_artists_proofs()
    {
        Print(110, "edition");
        var edition = Declare(new NewEdition { Numberings = [NumberingPlan.Read("1-100"), NumberingPlan.Read("A/P I-X")] });
        _register.GiveNumbers.AsPiled(edition, "1-100", Pile("1-100"));
        _register.GiveNumbers.AsPiled(edition, "A/P I-X", null);

        Sign(edition, "1-100, A/P I-X");

        Assert.Equal((100, 110), (_register.LookAround.Edition(edition).Edition.Size, _register.LookAround.Edition(edition).Edition.Total));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Roman_beside_arabic_and_a_deluxe_run_under_its_name()
    {
        Print(9, "edition");
        var edition = Declare(new NewEdition { Numberings = [NumberingPlan.Read("1-4"), NumberingPlan.Read("I-II"), NumberingPlan.Read("deluxe: 1-3")] });
        _register.GiveNumbers.ByHand(edition, Pile("1-9"), "1-4, I-II, deluxe: 1-3");

        Sign(edition, "1-4, I-II, deluxe: 1-3");

        Assert.Equal(["1/4", "2/4", "3/4", "4/4", "I/II", "II/II", "1/3", "2/3", "3/3"], _register.LookAround.Work(1).Impressions.Select(sheet => sheet.Pencilled));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_bon_a_tirer_of_each_run()
    {
        Print(2, "edition");
        Print(2, "edition");
        var edition = Declare(new NewEdition { Numberings = [NumberingPlan.Read("1-2"), NumberingPlan.Read("first run: B.A.T."), NumberingPlan.Read("second run: B.A.T.")] });
        _register.GiveNumbers.ByHand(edition, Pile("1-2"), "1, first run: B.A.T.");
        _register.GiveNumbers.ByHand(edition, Pile("1-2") with { Run = 2 }, "2, second run: B.A.T.");

        Sign(edition, "1-2, first run: B.A.T., second run: B.A.T.");

        Assert.Equal(["1/2", "B.A.T.", "2/2", "B.A.T."], _register.LookAround.Work(1).Impressions.Select(sheet => sheet.Pencilled));
        Assert.Empty(_register.CheckRegister.Run());
    }

    // A number pencilled twice by a slip and kept as 2 bis: a kind of the register's own, in the total of four and not in the size of three.
    [Fact]
    public void A_number_with_bis_behind_it()
    {
        Print(4, "edition");
        _register.AddKind.Run(new NewKind { Word = "bis", Mark = "bis", Name = "bis copy" });
        var own = _register.LookAround.OwnWords();
        var edition = Declare(new NewEdition { Numberings = [NumberingPlan.Read("1-3"), NumberingPlan.Read("bis", own)] });
        _register.GiveNumbers.ByHand(edition, Pile("1-4"), "1-3, bis");
        Sign(edition, "1-3");

        _register.InscribeImpressions.Run(Pile("4"), new WhatStandsOnIt { Pencilled = "2 bis/3", Signature = "M. Tolland" });

        Assert.Equal((3, 4), (_register.LookAround.Edition(edition).Edition.Size, _register.LookAround.Edition(edition).Edition.Total));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_fault_of_the_registers_own()
    {
        Print(2, "edition");
        _register.AddFault.Run(new NewFault("halo", "oil halo"));

        _register.SortPulls.Run(Pile("2"), "left-out", "halo");

        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_sold_print_that_still_hangs_on_the_wall()
    {
        Print(2, "edition");
        var edition = Declare(new NewEdition { Numberings = [NumberingPlan.Read("1-2")] });
        _register.GiveNumbers.AsPiled(edition, null, null);
        Sign(edition, "1-2");
        _register.PutAway.Run(Pile("1"), "Wall", RecordedDate.Read("2026-03-02"));

        _register.SellImpressions.Run(Pile("1"), new SalePeople("Quay Gallery"), new Sale { Date = RecordedDate.Read("2026-03-03") });

        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void An_edition_known_in_part_and_one_of_somebody_else_with_the_same_numbers()
    {
        Print(2, "edition");
        var ours = Declare(new NewEdition { Extent = "partly-known", Rank = "first", Numberings = [NumberingPlan.Read("1-20")] });
        var theirs = Declare(new NewEdition { Extent = "someone-elses", Rank = "later", Numberings = [NumberingPlan.Read("1-50")] });
        _register.GiveNumbers.ByHand(ours, Pile("1"), "7");

        _register.GiveNumbers.ByHand(theirs, Pile("2"), "7");

        Assert.Empty(_register.CheckRegister.Run());
    }

    private void Print(int sheets, string purpose)
    {
        _register.RecordPrintRun.Run(1, new NewPrintRun { Purpose = purpose, Pile = sheets, Printed = RecordedDate.Read("2026-03-01") });
        _register.SortPulls.Run(Pile(FormattableString.Invariant($"1-{sheets}")) with { Run = _register.LookAround.Work(1).Runs.Count }, "kept");
    }

    private long Declare(NewEdition edition) => _register.DeclareEdition.Run(1, edition);

    private void Sign(long edition, string numbers) =>
        _register.InscribeImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = numbers }, new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });

    private static ImpressionChoice Pile(string places) => new() { Work = 1, Pile = places };
}
