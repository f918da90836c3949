using EditionRegister.Domain;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Tests.Editions;

public sealed class EditionsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public EditionsTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Its_size_is_mended_until_the_first_sheet_is_signed_and_never_grows_after()
    {
        _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-6"));
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1"), new WhatStandsOnIt { Signature = "M. Tolland" });

        var refused = Assert.Throws<RefusedException>(() => _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-7")));

        Assert.Equal("edition-never-grows", refused.Name);
        Assert.Equal(6, _register.LookAround.Work(SmallEdition.Work).Editions[0].Size);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void It_is_closed_when_every_number_and_the_block_are_accounted_for()
    {
        _register.MendSize.Run(SmallEdition.Edition, NumberingPlan.Read("1-6"));

        var refused = Assert.Throws<RefusedException>(() => _register.CloseEdition.Run(SmallEdition.Edition));
        _register.StateNumberFate.Run(SmallEdition.Edition, "5-6", "never-printed", null);
        _register.StateMatrixFate.Run(SmallEdition.Work, null, "cancelled", Domain.Dates.RecordedDate.Read("2026-02-20"), null, correct: false);
        _register.CloseEdition.Run(SmallEdition.Edition);

        Assert.Equal(
            "The edition of “Harbour” cannot be closed yet: no sheet has 5/6, 6/6; what becomes of the block is not decided. Nothing was changed. Give each number to a sheet, say its fate with `edreg fate` or end a short edition with `edreg short`, state the matrix's fate with `edreg matrix fate`, and close again.",
            refused.Message);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_number_is_taken_back_while_the_sheet_is_unsigned_and_here()
    {
        _register.GiveNumbers.TakeBack(SmallEdition.Numbers("2"));
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1"), new WhatStandsOnIt { Signed = "yes" });

        var refused = Assert.Throws<RefusedException>(() => _register.GiveNumbers.TakeBack(SmallEdition.Numbers("1")));

        Assert.Equal("number-stays", refused.Name);
        Assert.DoesNotContain(_register.LookAround.Work(SmallEdition.Work).Impressions, sheet => sheet.Number == 2);
    }

    [Fact]
    public void A_sheet_left_out_is_never_numbered()
    {
        using TempRegister temp = new();
        var register = SmallEdition.Make(temp.Register);
        register.GiveNumbers.TakeBack(SmallEdition.Numbers("4"));
        var code = register.LookAround.Work(SmallEdition.Work).Impressions.Single(sheet => sheet.Numbering is null).ShownCode;
        register.SortPulls.Run(ImpressionChoice.OfCode(code), "left-out", "tear");

        var refused = Assert.Throws<RefusedException>(() => register.GiveNumbers.ByHand(SmallEdition.Edition, ImpressionChoice.OfCode(code), "4"));

        Assert.Equal($"{code} is left out, and only a kept sheet is numbered: a sheet left out never is. Nothing was changed. Sort it first with `edreg sort`.", refused.Message);
    }

    [Fact]
    public void A_change_on_top_of_someone_elses_is_refused_with_both_values()
    {
        var seen = _register.LookAround.Work(SmallEdition.Work).V;
        _register.EditWork.Run(SmallEdition.Work, "Harbour at Dawn", null, null, seen);

        var refused = Assert.Throws<RefusedException>(() => _register.EditWork.Run(SmallEdition.Work, "Harbour at Dusk", null, null, seen));

        Assert.Equal("changed-meanwhile", refused.Name);
        Assert.Contains("“Harbour at Dawn”", refused.Message, StringComparison.Ordinal);
        Assert.Contains("“Harbour at Dusk”", refused.Message, StringComparison.Ordinal);
    }
}
