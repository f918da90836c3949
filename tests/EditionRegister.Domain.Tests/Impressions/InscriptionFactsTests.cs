using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Impressions;

public sealed class InscriptionFactsTests
{
    private static readonly InscribedRole[] TwoRoles = [new(41, 1, "drew", "A. Brandt"), new(42, 2, "engraved", "B. Okker")];

    private long _next = 100;

    [Fact]
    public void What_a_new_pencil_does_not_say_is_left_out()
    {
        var deed = Deed(isNew: true);

        deed.SetPencilled(7, "Épreuve d'artiste 3/10", OwnWords.None);

        Assert.Equal("impression 7: pencil_kind=proof pencil_notation=arabic pencil_number=3 pencil_series=A/P pencil_size=10 pencilled=Épreuve d'artiste 3/10", Told(deed));
    }

    [Fact]
    public void On_a_row_that_stands_nothing_old_is_left()
    {
        var deed = Deed(isNew: false);

        deed.SetPencilled(7, "second state", OwnWords.None);

        Assert.Equal("impression 7: pencil_hedge=nothing pencil_kind=state pencil_notation=nothing pencil_number=nothing pencil_series=nothing pencil_size=nothing pencil_state=2 pencil_state_of=nothing pencilled=second state", Told(deed));
    }

    [Fact]
    public void A_number_rubbed_out_says_nothing_any_more()
    {
        var deed = Deed(isNew: false);

        deed.SetPencilled(7, null, OwnWords.None);

        Assert.Equal("impression 7: pencil_hedge=nothing pencil_kind=nothing pencil_notation=nothing pencil_number=nothing pencil_series=nothing pencil_size=nothing pencil_state=nothing pencil_state_of=nothing pencilled=nothing", Told(deed));
    }

    [Fact]
    public void A_plain_number_of_the_registers_own_kind_is_of_that_kind()
    {
        OwnWords own = new([NumberingKind.Own("laid-proof", "L.P.", "proof on laid paper", inSize: false, inTotal: true, forSale: true)], []);
        var deed = Deed(isNew: true);

        deed.SetPencilled(7, "L.P. II/III", own);

        Assert.Equal("impression 7: pencil_kind=proof pencil_notation=roman pencil_number=2 pencil_series=L.P. pencil_size=3 pencilled=L.P. II/III", Told(deed));
    }

    [Theory]
    [InlineData("letters", 3)]
    [InlineData("roman", 100)]
    public void The_numbering_settles_whether_a_c_is_a_letter_or_a_hundred(string expected, int number)
    {
        var deed = Deed(isNew: true);

        deed.SetPencilled(7, "A/P C", OwnWords.None, Notation.All.First(one => one.Word == expected));

        Assert.Contains($" pencil_notation={expected} pencil_number={number.ToString(System.Globalization.CultureInfo.InvariantCulture)} ", Told(deed), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_declined_is_said_to_stand_there()
    {
        var deed = Deed(isNew: true);

        deed.SetPencilled(7, "S/P 3/10", OwnWords.None);

        Assert.Equal("impression 7: pencil_kind=declined pencilled=S/P 3/10", Told(deed));
    }

    [Fact]
    public void An_inscription_brings_who_drew_and_engraved()
    {
        var deed = Deed(isNew: true);

        deed.SetInscription(9, "A. Brandt del., B. Okker sc.", OwnWords.None);

        Assert.Equal(
            "inscription 9: text=A. Brandt del., B. Okker sc.; inscription_role 101: inscription=9 name=A. Brandt ordinal=1 role=drew; inscription_role 102: inscription=9 name=B. Okker ordinal=2 role=engraved",
            Told(deed));
    }

    [Fact]
    public void A_changed_text_takes_the_rows_of_the_old_reading_and_removes_the_rest()
    {
        var deed = Deed(isNew: false);

        deed.SetInscription(9, "C. Verhey fec.", OwnWords.None, TwoRoles);

        Assert.EndsWith("; inscription_role 41: inscription=9 name=C. Verhey ordinal=1 role=made", Told(deed), StringComparison.Ordinal);
        Assert.Equal([new RowName("inscription_role", 42)], deed.Unsets);
    }

    [Fact]
    public void A_text_rubbed_out_leaves_no_role()
    {
        var deed = Deed(isNew: false);

        deed.SetInscription(9, null, OwnWords.None, TwoRoles);

        Assert.Contains(" says_kind=nothing ", Told(deed), StringComparison.Ordinal);
        Assert.Equal([new RowName("inscription_role", 41), new RowName("inscription_role", 42)], deed.Unsets);
    }

    private static string Told(Deed deed) => string.Join("; ", deed.Sets.Select(row => $"{row.Table.Name} {row.Id}: {string.Join(' ', row.Values.Select(value => $"{value.Fact.Name}={value.Value}"))}"));

    private Deed Deed(bool isNew) => new(Root.Work(1), _ => ++_next, (_, _) => isNew);
}
