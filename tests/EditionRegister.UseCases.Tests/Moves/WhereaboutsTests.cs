using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Moves;

/// <summary>Where sheets go beside the drawer: good practice, and none of it gives a finding.</summary>
public sealed class WhereaboutsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public WhereaboutsTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.RecordPerson.Run(new NewPerson { Name = "Inland Prints", IsOrganisation = true });
        _register.RecordPerson.Run(new NewPerson { Name = "Ada Brook" });
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void What_is_lent_is_insured_until_a_day_and_stays_the_makers()
    {
        _register.SendAway.Run(SmallEdition.Numbers("2"), new SentTo("Inland Prints"), new Going(MoveKind.Lent, null)
        {
            Moved = On("2026-03-02"), Until = On("2026-09"), Agreement = "loan 7", Value = 24_000, ValueCurrency = "EUR",
        });

        var link = _register.Sheet(2).Whereabouts[^1];
        Assert.Equal(("lent", Position.With(3), "loan 7", 24_000L, "EUR", "2026-09"), (link.Kind, link.To, link.Agreement, link.Value!.Value, link.ValueCurrency, link.Until.Text));
        Assert.Equal(Owner.Known(1), _register.Sheet(2).Whose);

        // Nobody looked at it when it went, which is a note and no more.
        Assert.All(_register.CheckRegister.Run(), finding => Assert.Equal("ConditionsAreKnownWhenLent", finding.Rule));
    }

    [Theory]
    [InlineData("in-transit")]
    [InlineData("at-framer")]
    [InlineData("at-photographer")]
    [InlineData("at-conservator")]
    public void Who_has_it_may_be_nobody_named_and_it_comes_back_all_the_same(string kind)
    {
        _register.SendAway.Run(SmallEdition.Numbers("2"), new SentTo(null), new Going(MoveKind.Of(kind)!, null));
        _register.ReturnImpressions.Run(SmallEdition.Numbers("2"), null, "Drawer 1");

        Assert.Equal(["pulled", kind, "returned"], _register.Sheet(2).Whereabouts.Select(link => link.Kind));
        Assert.Equal(Position.Unknown, _register.Sheet(2).Whereabouts[1].To);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_consignee_passes_it_on_and_still_answers_and_the_owners_share_is_the_one_agreed()
    {
        _register.Consign.Run(SmallEdition.Numbers("2"), "Quay Gallery", rate: 4_000);
        _register.SendAway.Run(SmallEdition.Numbers("2"), new SentTo("Inland Prints"), new Going(MoveKind.SubConsigned, null) { Rate = 2_000 });
        var hands = Consignments.HandsOf(_register.LookAround.Work(1), _register.Sheet(2));
        _register.SellImpressions.Run(SmallEdition.Numbers("2"), new SalePeople("Ada Brook"), new Sale { Price = 20_000, Currency = "EUR", Collected = true });

        // 40 % of 200.00 is 80.00, so the owner has 120.00; what the two share between them is theirs.
        var sold = _register.Sheet(2).Ownership[^1];
        Assert.Equal([2L, 3L], hands);
        Assert.Equal((3L, 12_000L), (sold.Agent!.Value, sold.Net!.Value));
        Assert.Null(Consignments.StandingOf(_register.LookAround.Work(1), _register.Sheet(2)));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_sold_print_still_hangs_until_the_show_closes_and_then_waits_for_its_buyer()
    {
        var show = _register.MakeShow.Run(new NewShow { Name = "Shoreline", Kind = "exhibition", Opens = On("2026-05-01"), Closes = On("2026-06-30"), Place = 1 });
        _register.SellImpressions.Run(SmallEdition.Numbers("3"), new SalePeople("Ada Brook"), new Sale { Date = On("2026-04-01") });
        _register.SendAway.Run(SmallEdition.Numbers("3"), new SentTo(null), new Going(MoveKind.Exhibited, null) { Show = show, Moved = On("2026-05-01") });
        _register.SendAway.Run(SmallEdition.Numbers("3"), new SentTo(null), new Going(MoveKind.AwaitingCollection, null) { Moved = On("2026-07-01"), Until = On("2026-07-15") });
        _register.HandOver.Run(SmallEdition.Numbers("3"), On("2026-07-10"));

        var links = _register.Sheet(3).Whereabouts;
        Assert.Equal(["pulled", "exhibited", "awaiting-collection", "collected"], links.Select(link => link.Kind));
        Assert.Equal((show, "2026-06-30", Position.InPlace(1)), (links[1].Show!.Value, links[1].Until.Text, links[1].To));
        Assert.Equal(Position.With(4), links[^1].To);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void What_was_lost_is_found_and_what_is_found_goes_on()
    {
        _register.RecordMishap.Run(SmallEdition.Numbers("1"), MoveKind.Lost, On("2026-04-01"));
        _register.FindAgain.Run(SmallEdition.Numbers("1"), new SentTo(null, "Drawer 1"), On("2026-05-01"), "behind the press");
        _register.Consign.Run(SmallEdition.Numbers("1"), "Quay Gallery", On("2026-06-01"));

        Assert.Equal(["pulled", "lost", "found", "consigned"], _register.Sheet(1).Whereabouts.Select(link => link.Kind));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_destroyed_sheet_keeps_its_number_and_its_certificate_is_withdrawn()
    {
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1"), new() { AsSpelled = true, Signature = "M. Tolland" });
        _register.IssueCertificates.Run(SmallEdition.Numbers("1"));
        _register.ReserveSheets.Run(SmallEdition.Numbers("1"), "Ada Brook");

        var done = _register.RecordMishap.Run(SmallEdition.Numbers("1"), MoveKind.Destroyed, note: "burst pipe");

        var sheet = _register.Sheet(1);
        Assert.Equal([sheet.Documents.Single().Serial], done.Withdrawn);
        Assert.Equal(("withdrawn", 1, Position.Gone), (sheet.Documents.Single().Standing, sheet.Number, sheet.Where));
        Assert.Null(sheet.StandingReservation);
        Assert.Empty(_register.CheckRegister.Run());
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);
}
