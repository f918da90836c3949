using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Tests.Editions;

/// <summary>Editions of which not all was printed at once, or ever.</summary>
public sealed class ShortAndOnDemandTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public ShortAndOnDemandTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    private (Work Work, Edition Edition) Now => _register.LookAround.Edition(SmallEdition.Edition);

    // Declared 6, printed 4: while nothing is signed the size is set to 4, and four pencilled n/6 are to be pencilled n/4.
    // "A run that fails is numbered as a short edition": Tamarind stipulations, Archives of American Art.
    [Fact]
    public void A_short_edition_is_numbered_anew_while_nothing_is_signed()
    {
        _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-6"));
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1-4"), new WhatStandsOnIt { AsSpelled = true });

        var fell = _register.EndShort.Run(SmallEdition.Edition);

        Assert.Equal(("reset", 2, 4), (fell.Word, fell.NeverPrinted, fell.ToPencilAnew.Count));
        Assert.Equal((4, 6, "reset"), (Now.Edition.Size, Now.Edition.Intended, Now.Edition.FellShort));
        Assert.Equal(["1/4", "2/4", "3/4", "4/4"], Sheets().Select(sheet => Now.Work.NumberOf(sheet)));
        Assert.All(Sheets(), sheet => Assert.Null(sheet.Pencilled));
        Assert.Empty(_register.CheckRegister.Run());
    }

    // Given were 1, 2, 3 and 4 of 8; 4 is taken back and given as 8: the gap closes, 8 becomes 4.
    [Fact]
    public void Numbers_above_the_new_size_move_down_into_the_gaps()
    {
        _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-8"));
        var code = _register.Sheet(4).ShownCode;
        _register.GiveNumbers.TakeBack(ImpressionChoice.OfCode(code));
        _register.GiveNumbers.ByHand(SmallEdition.Edition, ImpressionChoice.OfCode(code), "8");

        _register.EndShort.Run(SmallEdition.Edition);

        Assert.Equal([1, 2, 3, 4], Sheets().Select(sheet => sheet.Number ?? 0));
        Assert.Equal(code, _register.Sheet(4).ShownCode);
        Assert.Empty(_register.CheckRegister.Run());
    }

    // Declared 6, printed 4, one signed: 6 numbers stay, 2 were never printed.
    [Fact]
    public void Afterwards_it_is_disclosed_on_map_and_certificate_and_the_edition_can_be_closed()
    {
        _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-6"));
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });

        var fell = _register.EndShort.Run(SmallEdition.Edition, "the block split");

        Assert.Equal(("disclosed", 2, 6), (fell.Word, fell.NeverPrinted, Now.Edition.Size));
        Assert.Equal("4 of 6 numbers printed", Fact(1, "short-edition"));
        Assert.Contains("5/6 and 6/6 were never printed", Fact(1, "edition"), StringComparison.Ordinal);
        Assert.Contains(new MapTotal("short edition", "4 of 6 numbers printed"), NumberMap.Of(Now.Work, Now.Edition).Totals);
        _register.StateMatrixFate.Run(SmallEdition.Work, null, "cut-up", RecordedDate.Read("2026-03-01"), null, correct: false);
        _register.CloseEdition.Run(SmallEdition.Edition, RecordedDate.Read("2026-03-02"));
        Assert.Empty(_register.CheckRegister.Run());
    }

    // 20 declared and 30 intended; 3 printed in March on kozo, 2 more the year after on hosho: 5 of 20 so far.
    [Fact]
    public void What_is_printed_on_demand_says_how_far_and_on_which_papers()
    {
        var work = _register.RecordWork.Run(new NewWork { Title = "Weir" }, ["Mira Tolland"]);
        Print(work, 3, "2026-03", "kozo");
        var edition = _register.DeclareEdition.Run(work, new NewEdition { Printing = "on-demand", Intended = 30, Numberings = [NumberingPlan.Read("1-20")] });
        _register.GiveNumbers.AsPiled(edition, null, null);
        _register.InscribeImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-3" }, new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
        var first = Facts(edition, 1);
        Print(work, 2, "2027-01", "hosho");
        _register.GiveNumbers.AsPiled(edition, null, null);

        var second = Facts(edition, 4);

        Assert.Equal("printed on demand, 3 of 20 so far", first["on-demand"]);
        Assert.DoesNotContain("printings", first.Keys);
        Assert.Equal("printed on demand, 5 of 20 so far", second["on-demand"]);
        Assert.Equal("1/20 to 3/20 printed March 2026 on kozo; 4/20 and 5/20 printed January 2027 on hosho", second["printings"]);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_certificate_issued_before_the_next_run_still_agrees()
    {
        var work = _register.RecordWork.Run(new NewWork { Title = "Weir" }, ["Mira Tolland"]);
        Print(work, 1, "2026-03", "kozo");
        var edition = _register.DeclareEdition.Run(work, new NewEdition { Printing = "on-demand", Numberings = [NumberingPlan.Read("1-20")] });
        _register.GiveNumbers.AsPiled(edition, null, null);
        _register.IssueCertificates.Run(new ImpressionChoice { Edition = edition, Sheets = "1" });

        Print(work, 2, "2027-01", "hosho");
        _register.GiveNumbers.AsPiled(edition, null, null);

        Assert.Empty(_register.CheckRegister.Run());
    }

    private IEnumerable<Impression> Sheets() => Now.Work.Impressions.Where(sheet => Now.Edition.Numberings[0].Id == sheet.Numbering).OrderBy(sheet => sheet.Number);

    private string Fact(int number, string key) => Facts(SmallEdition.Edition, number)[key];

    private Dictionary<string, string> Facts(long edition, int number)
    {
        var (work, found) = _register.LookAround.Edition(edition);
        var sheet = work.Impressions.First(one => one.Number == number && found.Find(one.Numbering) is { Kind.InSize: true });

        return CertificateFacts.Of(work, sheet, SizeStyle.Millimetres).ToDictionary(fact => fact.Key, fact => fact.Value);
    }

    private void Print(long work, int sheets, string printed, string paper)
    {
        _register.RecordPrintRun.Run(work, new NewPrintRun { Pile = sheets, Printed = RecordedDate.Read(printed), Paper = paper });
        var run = _register.LookAround.Work(work).Runs.Count;
        _register.SortPulls.Run(new ImpressionChoice { Work = work, Run = run, Pile = sheets == 1 ? "1" : FormattableString.Invariant($"1-{sheets}") }, "kept");
    }
}
