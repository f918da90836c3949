using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class WorkedOverSheetsAreOnePaperTests
{
    private readonly string _code = Harbour.Clean().The("left out").ShownCode;

    [Fact]
    public void A_sheet_left_out_that_went_into_another_work_and_is_gone_here_is_as_it_should_be() => Assert.Empty(Found(Gone));

    [Fact]
    public void One_that_lies_here_still_by_its_old_code() =>
        Assert.Equal([$"Contradiction: Sheet {_code} of “Harbour” was worked over into “Night Harbour”, and lies here still by its old code."], Found(sheet => sheet));

    [Fact]
    public void One_that_is_kept_again() =>
        Assert.Equal([$"Contradiction: Sheet {_code} of “Harbour” was worked over into “Night Harbour”, and is kept here."], Found(sheet => Gone(sheet) with { Standing = "kept" }));

    private static IReadOnlyList<string> Found(Func<Impression, Impression> change) => FindingsOf.Rule(
        "WorkedOverSheetsAreOnePaper", Harbour.Clean().WithSheet("left out", sheet => change(sheet with { WorkedInto = new WorkedInto(18, "Night Harbour", null) })));

    private static Impression Gone(Impression sheet) => sheet with
    {
        Whereabouts = [.. sheet.Whereabouts, new(9_999, 1, 2, "worked-over", sheet.Where, Position.Gone, Harbour.On("2026-04-01"), RecordedDate.None, null, null)],
    };
}
