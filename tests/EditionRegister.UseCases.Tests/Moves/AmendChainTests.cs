using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Moves;

/// <summary>The tail of a chain set anew: check, which replays the logbook and asks the chain's keys, finds nothing afterwards.</summary>
public sealed class AmendChainTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;
    private readonly string _code;

    public AmendChainTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.RecordPerson.Run(new NewPerson { Name = "Ada Brook" });
        _register.RecordPerson.Run(new NewPerson { Name = "Adam Fenwright" });
        _register.Consign.Run(SmallEdition.Numbers("1"), "Quay Gallery", On("2026-03-01"), On("2026-12-31"));
        _register.ReturnImpressions.Run(SmallEdition.Numbers("1"), null, "Drawer 1", On("2026-06-01"));
        _register.SellImpressions.Run(SmallEdition.Numbers("1"), new SalePeople("Ada Brook"), new Sale { Date = On("2026-07-01"), Price = 18_000, Currency = "EUR", Collected = true });
        _code = _register.Sheet(1).ShownCode;
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_step_is_put_right_and_the_next_goes_on_from_it_in_one_entry()
    {
        var before = _register.LookAround.Head().N;

        _register.AmendChain.Move(_code, new AmendedStep(2), new SentTo("Adam Fenwright"), new MoveCorrection { Kind = MoveKind.Lent, Date = On("2026-04"), Note = "not consigned" });

        var links = _register.Sheet(1).Whereabouts;
        Assert.Equal(("lent", Position.With(4), Position.With(4)), (links[1].Kind, links[1].To, links[2].From));
        Assert.Equal(before + 1, _register.LookAround.Head().N);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Terms_are_prolonged()
    {
        _register.AmendChain.Move(_code, new AmendedStep(2), null, new MoveCorrection { Until = On("2027-06-30"), Rate = 3_500, Agreement = "prolonged by letter" });

        var link = _register.Sheet(1).Whereabouts[1];
        Assert.Equal(("2027-06-30", 3_500, "prolonged by letter"), (link.Until.Text, link.Rate, link.Agreement));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_step_learned_of_late_is_put_after_any_other(int after)
    {
        _register.AmendChain.Move(_code, new AmendedStep(after, Amending.PutAfter), new SentTo("Adam Fenwright"), new MoveCorrection { Kind = MoveKind.AtFramer });

        var links = _register.Sheet(1).Whereabouts;
        Assert.Equal([1, 2, 3, 4, 5], links.Select(link => link.Ordinal));
        Assert.Equal(("at-framer", Position.With(4)), (links[after].Kind, links[after].To));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_step_that_never_was_is_taken_out(int step)
    {
        var out_ = _register.Sheet(1).Whereabouts[step - 1].Id;

        _register.AmendChain.Move(_code, new AmendedStep(step, Amending.TakeOut), null, new MoveCorrection());

        var links = _register.Sheet(1).Whereabouts;
        Assert.Equal([1, 2, 3], links.Select(link => link.Ordinal));
        Assert.DoesNotContain(out_, links.Select(link => link.Id));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void An_owner_in_between_is_learned_of_and_taken_out_again()
    {
        _register.AmendChain.Transfer(_code, new AmendedStep(1, Amending.PutAfter), new AmendedPeople("Adam Fenwright"), new TransferCorrection { Kind = MoveKind.Given, Date = On("2026-05") });
        var owners = _register.Sheet(1).Ownership.Select(link => (link.Ordinal, link.From?.Person, link.To.Person)).ToList();
        var findings = _register.CheckRegister.Run();
        _register.AmendChain.Transfer(_code, new AmendedStep(2, Amending.TakeOut), new AmendedPeople(), new TransferCorrection());

        Assert.Equal([(1, null, 1L), (2, 1L, 4L), (3, 4L, 3L)], owners);
        Assert.Equal([(1, null, 1L), (2, 1L, 3L)], _register.Sheet(1).Ownership.Select(link => (link.Ordinal, link.From?.Person, link.To.Person)));
        Assert.Empty(findings);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_buyer_and_a_price_are_put_right()
    {
        _register.AmendChain.Transfer(_code, new AmendedStep(2), new AmendedPeople(IsToUnknown: true), new TransferCorrection { Price = 19_500, Net = 19_500, Currency = "EUR" });

        var sold = _register.Sheet(1).Ownership[1];
        Assert.Equal((Owner.Unknown, 19_500L, 19_500L), (sold.To, sold.Price!.Value, sold.Net!.Value));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void What_another_window_changed_meanwhile_is_not_overwritten()
    {
        var seen = _register.Sheet(1).Whereabouts[1].V;
        _register.AmendChain.Move(_code, new AmendedStep(2), null, new MoveCorrection { Note = "first" }, seen);

        var refused = Assert.Throws<RefusedException>(() => _register.AmendChain.Move(_code, new AmendedStep(2), null, new MoveCorrection { Note = "second" }, seen));

        Assert.Equal("changed-meanwhile", refused.Name);
        Assert.Equal("first", _register.Sheet(1).Whereabouts[1].Note);
    }

    [Fact]
    public void The_register_made_anew_from_its_logbook_has_the_same_chains()
    {
        _register.AmendChain.Move(_code, new AmendedStep(1, Amending.PutAfter), new SentTo("Adam Fenwright"), new MoveCorrection { Kind = MoveKind.AtFramer });
        _register.AmendChain.Move(_code, new AmendedStep(3, Amending.TakeOut), null, new MoveCorrection());

        // Check folds every entry and compares each row of each table with it, both ways.
        Assert.Empty(_register.CheckRegister.Run());
        Assert.Equal(["pulled", "at-framer", "returned", "collected"], _register.Sheet(1).Whereabouts.Select(link => link.Kind));
    }

    private static RecordedDate On(string date) => RecordedDate.Read(date);
}
