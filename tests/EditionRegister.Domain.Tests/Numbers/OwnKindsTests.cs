using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Numbers;

/// <summary>Kinds that a register made for itself, read from pencil and from what a person types. Marks and kinds are invented here.</summary>
public class OwnKindsTests(string culture = "") : InCulture(culture)
{
    private static readonly NumberingKind Lettered = NumberingKind.Own("lettered", "L.C.", "lettered copy", inSize: false, inTotal: true, forSale: true);
    private static readonly NumberingKind Bis = NumberingKind.Own("bis", "bis", "bis copy", inSize: false, inTotal: true, forSale: false);
    private static readonly NumberingKind Deluxe = NumberingKind.Own("deluxe-proof", "A/P deluxe", "deluxe proof", inSize: false, inTotal: true, forSale: true);
    private static readonly OwnWords Own = new([Lettered, Bis, Deluxe], []);

    [Theory]
    [InlineData("L.C. C", "lettered", "letters", 3, null)]
    [InlineData("l.c. 2/5", "lettered", "arabic", 2, 5)]
    [InlineData("bis", "bis", "none", null, null)]
    [InlineData("12 bis", "bis", "arabic", 12, null)]
    [InlineData("A/P deluxe II/V", "deluxe-proof", "roman", 2, 5)]
    [InlineData("A/P II/V", "artists-proof", "roman", 2, 5)]
    [InlineData("3/12", "numbered", "arabic", 3, 12)]
    public void Are_read_by_their_marks(string text, string kind, string notation, int? number, int? of)
    {
        Assert.True(PencilledNumber.TryParse(text, null, Own, out var read, out _));

        Assert.Equal((kind, notation, number, of), (read.Kind.Word, read.Notation.Word, read.Number, read.Of));
    }

    [Theory]
    [InlineData("12 bis/30")]
    [InlineData("Bismarck 3")]
    [InlineData("a bisque")]
    public void Are_not_guessed_at(string text) => Assert.False(PencilledNumber.TryParse(text, null, Own, out _, out _));

    [Fact]
    public void Are_strange_to_a_register_that_has_not_made_them()
    {
        Assert.False(PencilledNumber.TryParse("L.C. C", out _));
        Assert.Throws<RefusedException>(() => NumberRanges.Read("L.C. A-C"));
        Assert.Equal("lettered", NumberRanges.Read("3, L.C. A-C", Own)[1].Kind!.Word);
        Assert.Equal(3, NumberingPlan.Read("L.C. A-C", Own).Size);
    }

    // Which marks a register has is known once it is open; until then a mistyped code must still be told at once.
    [Theory]
    [InlineData("L.C. A-C", true)]
    [InlineData("deluxe: I, L.C. A", true)]
    [InlineData("bis", true)]
    [InlineData("3-7, 9", true)]
    [InlineData("7KQ4-M2X4", false)]
    [InlineData("3-", false)]
    [InlineData("7-3", false)]
    [InlineData(", 3", false)]
    public void May_be_meant_before_it_is_known_which_there_are(string text, bool mayBe) => Assert.Equal(mayBe, Accepted(() => NumberRanges.Plausible(text)));

    [Theory]
    [InlineData("L.C. A-C", true)]
    [InlineData("deluxe: 1-10", true)]
    [InlineData("1-4, 6", false)]
    [InlineData("2-12", false)]
    public void May_be_declared_before_it_is_known_which_there_are(string text, bool mayBe) => Assert.Equal(mayBe, Accepted(() => NumberingPlan.Plausible(text)));

    [Theory]
    [InlineData("L.C.", null)]
    [InlineData("bis", null)]
    [InlineData("C", "a number")]
    [InlineData("XV", "a number")]
    [InlineData("A.P.", "artist's proof")]
    [InlineData("hc", "hors commerce")]
    public void Have_marks_that_nothing_else_is_read_as(string mark, string? takenFor) => Assert.Equal(takenFor, OwnMark.TakenFor(mark, NumberingKind.All));

    [Theory]
    [InlineData("L.C.", true)]
    [InlineData("épreuve", true)]
    [InlineData("12 bis", false)]
    [InlineData("A-C", false)]
    [InlineData("a, b", false)]
    [InlineData("", false)]
    [InlineData(" bis", false)]
    public void Have_marks_of_letters(string mark, bool isOne) => Assert.Equal(isOne, OwnMark.IsOne(mark));

    [Fact]
    public void Numberings_of_one_kind_are_told_apart_by_name()
    {
        var plan = NumberingPlan.Read("Deluxe: I-X");
        var range = Assert.Single(NumberRanges.Read("Deluxe: II-IV"));

        Assert.Equal(("Deluxe", "roman", 10), (plan.Name, plan.Notation.Word, plan.Size));
        Assert.Equal("Deluxe: I-X", plan.ToString());
        Assert.Equal(("Deluxe", 2, 4), (range.Name, range.From, range.To));
        Assert.Equal(range, Assert.Single(NumberRanges.Read(range.ToString())));
    }

    private static bool Accepted(Action read)
    {
        try
        {
            read();

            return true;
        }
        catch (RefusedException)
        {
            return false;
        }
    }
}

public sealed class OwnKindsInTurkishTests() : OwnKindsTests("tr-TR");
