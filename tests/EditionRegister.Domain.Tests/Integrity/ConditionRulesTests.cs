using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class ConditionRulesTests
{
    private const string Lent = "ConditionsAreKnownWhenLent";
    private const string Damage = "DamageOnTheWayIsTakenUp";

    private static readonly Work Clean = Harbour.Clean();
    private readonly string _sheet = $"1/12 of “Harbour” ({Clean.The("1/12").ShownCode})";

    [Fact]
    public void Lent_without_a_report_is_a_note()
    {
        string[] said = [$"Note: {_sheet} was lent to Tidewater Gallery (2026-06-01), and no report says how it was when it went."];

        Assert.Equal(said, Findings(Lent, Out));
        Assert.Equal(said, Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "at-rest", "2026-05-30")] }));
        Assert.Equal(said, Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "going-out", "2026-06-03")] }));
        Assert.Equal(said, Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "going-out", "2026-04-01"), Report(2, "coming-back", "2026-05-01")] }));
    }

    [Fact]
    public void Lent_with_one_or_home_again_is_no_finding()
    {
        Assert.Empty(Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "going-out", "2026-05-30")] }));
        Assert.Empty(Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "going-out", "2026-06")] }));
        Assert.Empty(Findings(Lent, sheet => Out(sheet) with { ConditionReports = [Report(1, "going-out", "")] }));
        Assert.Empty(Findings(Lent, sheet => Home(Out(sheet))));
        Assert.Empty(FindingsOf.Rule(Lent, Clean));
    }

    [Fact]
    public void Damage_that_nobody_took_up_is_a_query()
    {
        string[] said = [$"Query: {_sheet} came back (2026-07-02) with what it had not gone out with (2026-05-30): handling crease (upper left) and dented corner (lower right). Its condition says nothing of it."];

        Assert.Equal(said, Findings(Damage, Damaged));
        Assert.Equal(said, Findings(Damage, sheet => Damaged(sheet) with { Condition = "as pulled" }));
        Assert.Equal(
            [$"Query: {_sheet} came back (2026-07-02) with what it had not gone out with (2026-05-30): dented corner (lower right). Its condition says nothing of it."],
            Findings(Damage, sheet => Damaged(sheet) with { Condition = "Handling crease, faint" }));
    }

    [Fact]
    public void Damage_taken_up_or_known_before_is_no_finding()
    {
        Assert.Empty(Findings(Damage, sheet => Damaged(sheet) with { Condition = "handling crease and dented corner" }));
        Assert.Empty(Findings(Damage, sheet => Damaged(sheet) with { Condition = "a little the worse" }));
        Assert.Empty(Findings(Damage, sheet => Damaged(sheet) with { ConditionReports = [.. Damaged(sheet).ConditionReports, Report(3, "at-rest", "2026-07-05")] }));
        Assert.Empty(Findings(Damage, sheet => Damaged(sheet) with { ConditionReports = [Damaged(sheet).ConditionReports[1] with { Ordinal = 1 }] }));
        Assert.Empty(Findings(Damage, sheet => sheet with { ConditionReports = [Report(1, "going-out", "2026-05-30", ("trimmed", null)), Report(2, "coming-back", "2026-07-02", ("trimmed", "left edge"))] }));
    }

    private static ConditionReport Report(int ordinal, string occasion, string date, params (string Term, string? Position)[] remarks) => new(
        ordinal, 1, ordinal, occasion, RecordedDate.Read(date), Harbour.Maker, occasion == "coming-back" ? "a little the worse" : null,
        [.. remarks.Select((remark, at) => new ConditionRemark(at + 1, at + 1, remark.Term, remark.Position, null, null))]);

    private static Impression Damaged(Impression sheet) => sheet with
    {
        ConditionReports =
        [
            Report(1, "going-out", "2026-05-30", ("surface-dirt", "Lower margin")),
            Report(2, "coming-back", "2026-07-02", ("surface-dirt", "lower margin"), ("handling-crease", "upper left"), ("dented-corner", "lower right")),
        ],
    };

    private static Impression Out(Impression sheet) => sheet with
    {
        Whereabouts = [.. sheet.Whereabouts, new(900, 1, 2, "lent", sheet.Where, Position.With(Harbour.Gallery), Harbour.On("2026-06-01"), RecordedDate.None, null, null)],
    };

    private static Impression Home(Impression sheet) => sheet with
    {
        Whereabouts = [.. sheet.Whereabouts, new(901, 1, 3, "returned", sheet.Where, Position.InPlace(Harbour.Drawer), Harbour.On("2026-07-01"), RecordedDate.None, null, null)],
    };

    private static IReadOnlyList<string> Findings(string rule, Func<Impression, Impression> change) => FindingsOf.Rule(rule, Clean.WithSheet("1/12", change));
}
