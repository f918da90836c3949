using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Moves;

public sealed class ListDueTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public ListDueTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.RecordPerson.Run(new NewPerson { Name = "Ada Brook" });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Over_and_to_come_are_told_apart_and_what_is_further_away_is_left_out()
    {
        _register.Consign.Run(SmallEdition.Numbers("1"), "Quay Gallery", until: On("2026-10-31"));
        _register.SendAway.Run(SmallEdition.Numbers("2"), new SentTo("Ada Brook"), new Going(MoveKind.Lent, null) { Until = On("2026-11") });
        _register.ReserveSheets.Run(SmallEdition.Numbers("3"), "Ada Brook", until: On("2026-12-01"));
        _register.ReserveSheets.Run(SmallEdition.Numbers("4"), null, until: On("2027-02-01"));

        var due = _register.ListDue.Run(new DateOnly(2026, 11, 15), 16);

        // From 15 November 16 days reach to 1 December; a month counts as over only once its last day is.
        Assert.Equal(
            [("consigned", true, 2L), ("lent", false, 3L), ("reserved", false, 3L)],
            due.Sheets.Select(one => (one.What, one.HasPassed, one.Person!.Value)));
    }

    [Fact]
    public void A_consignment_that_was_sold_passed_on_or_ended_is_waited_for_no_more_or_once()
    {
        _register.Consign.Run(SmallEdition.Numbers("1-3"), "Quay Gallery", until: On("2026-10-31"));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale());
        _register.ReturnImpressions.Run(SmallEdition.Numbers("2"), null, null);
        _register.SendAway.Run(SmallEdition.Numbers("3"), new SentTo("Ada Brook"), new Going(MoveKind.AtFramer, null));

        var due = Assert.Single(_register.ListDue.Run(new DateOnly(2026, 11, 1)).Sheets);

        Assert.Equal((3, "consigned"), (due.Sheet.Number, due.What));
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);
}
