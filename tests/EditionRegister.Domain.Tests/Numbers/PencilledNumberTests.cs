using CsCheck;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Tests.Numbers;

public class PencilledNumberTests(string culture = "") : InCulture(culture)
{
    // The marks and their languages: Tamarind definitions, workshop glossaries, and dealers' glossaries in French, Italian and Spanish.
    [Theory]
    [InlineData("3/12", "numbered arabic 3 12", "3/12")]
    [InlineData(" 3 / 12 ", "numbered arabic 3 12", "3/12")]
    [InlineData("3\u204412", "numbered arabic 3 12", "3/12")]
    [InlineData("3\u00A0/\u00A012", "numbered arabic 3 12", "3/12")]
    [InlineData("003/250", "numbered arabic 3 250", "3/250")]
    [InlineData("1/1", "numbered arabic 1 1", "1/1")]
    [InlineData("IV/X", "numbered roman 4 10", "IV/X")]
    [InlineData("iv/x", "numbered roman 4 10", "IV/X")]
    [InlineData("7", "numbered arabic 7 ", "7")]
    [InlineData("VII", "numbered roman 7 ", "VII")]
    [InlineData("C", "numbered letters 3 ", "C")]
    [InlineData("A/P", "artists-proof none  ", "A/P")]
    [InlineData("A/P 2/3", "artists-proof arabic 2 3", "A/P 2/3")]
    [InlineData("A/P II/V", "artists-proof roman 2 5", "A/P II/V")]
    [InlineData("1/5 A/P", "artists-proof arabic 1 5", "A/P 1/5")]
    [InlineData("AP1/250", "artists-proof arabic 1 250", "A/P 1/250")]
    [InlineData("ap 3/5", "artists-proof arabic 3 5", "A/P 3/5")]
    [InlineData("A.P. 3", "artists-proof arabic 3 ", "A/P 3")]
    [InlineData("A.P.3", "artists-proof arabic 3 ", "A/P 3")]
    [InlineData("A. P. II", "artists-proof roman 2 ", "A/P II")]
    [InlineData("A / P 3 / 5", "artists-proof arabic 3 5", "A/P 3/5")]
    [InlineData("E.A. 3/10", "artists-proof arabic 3 10", "A/P 3/10")]
    [InlineData("EA", "artists-proof none  ", "A/P")]
    [InlineData("P.d.A. I/III", "artists-proof roman 1 3", "A/P I/III")]
    [InlineData("PdA", "artists-proof none  ", "A/P")]
    [InlineData("P/A 2/4", "artists-proof arabic 2 4", "A/P 2/4")]
    [InlineData("P/P", "printers-proof none  ", "P/P")]
    [InlineData("PP 1/2", "printers-proof arabic 1 2", "P/P 1/2")]
    [InlineData("H.C. C", "hors-commerce letters 3 ", "H.C. C")]
    [InlineData("HC V", "hors-commerce roman 5 ", "H.C. V")]
    [InlineData("V/ XVIII HC", "hors-commerce roman 5 18", "H.C. V/XVIII")]
    [InlineData("B.A.T.", "bon-a-tirer none  ", "B.A.T.")]
    [InlineData("BAT", "bon-a-tirer none  ", "B.A.T.")]
    [InlineData("R.T.P.", "bon-a-tirer none  ", "B.A.T.")]
    [InlineData("T/P", "trial none  ", "T/P")]
    [InlineData("TP 2", "trial arabic 2 ", "T/P 2")]
    [InlineData("C.T.P. 1/3", "colour-trial arabic 1 3", "C.T.P. 1/3")]
    [InlineData("C/P", "cancellation none  ", "C/P")]
    [InlineData("publisher’s proof 1/2", "publishers-proof arabic 1 2", "publisher's proof 1/2")]
    [InlineData("T/P 2/4", "trial arabic 2 4", "T/P 2/4")]
    [InlineData("2/4 Workshop Proof", "workshop arabic 2 4", "workshop proof 2/4")]
    public void A_plain_number_is_read_with_its_mark_and_spelled_one_way(string text, string meaning, string spelled)
    {
        Assert.True(PencilledNumber.TryParse(text, out var number, out var why));

        Assert.Equal(meaning, Meaning(number));
        Assert.Equal(spelled, number.ToString());
        Assert.Equal(PencilReading.Read, why);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" \t ")]
    public void Nothing_written_is_said_to_be_empty(string? text)
    {
        Assert.False(PencilledNumber.TryParse(text, out var number, out var why));

        Assert.Equal(PencilReading.Empty, why);
        Assert.Null(number);
    }

    [Theory]
    [InlineData("13/12")]
    [InlineData("0/12")]
    [InlineData("0")]
    [InlineData("1/0")]
    [InlineData("V/III")]
    [InlineData("A/P 6/5")]
    [InlineData("1/99999999999")]
    [InlineData("6413/ 6")]
    public void A_number_that_cannot_be_is_said_to_be_out_of_range(string text)
    {
        Assert.False(PencilledNumber.TryParse(text, out var number, out var why));

        Assert.Equal(PencilReading.OutOfRange, why);
        Assert.Null(number);
    }

    [Theory]
    [InlineData("3/20/65")]
    [InlineData("3/20/1965")]
    [InlineData("1965")]
    [InlineData("A/P 1965")]
    [InlineData("3/12?")]
    [InlineData("?/12")]
    [InlineData("3/")]
    [InlineData("/12")]
    [InlineData("AP/160")]
    [InlineData("\"3/12\"")]
    [InlineData("3/12 Harbour")]
    [InlineData("3/12.")]
    [InlineData("3 of 12")]
    [InlineData("No. 3")]
    [InlineData("#3")]
    [InlineData("1/2\"")]
    [InlineData("½")]
    [InlineData("-3/12")]
    [InlineData("3-7")]
    [InlineData("3/12, 4/12")]
    [InlineData("3/XII")]
    [InlineData("IIII/X")]
    [InlineData("Harbour")]
    [InlineData("Bat")]
    [InlineData("BAT OK")]
    [InlineData("MC")]
    [InlineData("mix")]
    [InlineData("i")]
    [InlineData("N/A")]
    [InlineData("C/O")]
    [InlineData("A/P A/P")]
    [InlineData("3\n/12")]
    [InlineData("3/12\u0000")]
    [InlineData("٣/١٢")]
    public void What_is_not_a_plain_number_is_not_guessed_at(string text)
    {
        Assert.False(PencilledNumber.TryParse(text, out var number, out var why));

        Assert.Equal(PencilReading.NotPlain, why);
        Assert.Null(number);
    }

    [Theory]
    [InlineData("H.C. C", "hors-commerce roman 100 ")]
    [InlineData("H.C. I", "hors-commerce letters 9 ")]
    [InlineData("I/V", "numbered letters 9 22")]
    [InlineData("C/D", "numbered letters 3 4")]
    [InlineData("H.C. B", null)]
    [InlineData("A/P II", null)]
    [InlineData("V/C", null)]
    [InlineData("3/12", null)]
    [InlineData("B.A.T.", null)]
    public void A_letter_that_may_be_a_numeral_tells_its_other_reading(string text, string? other)
    {
        Assert.True(PencilledNumber.TryParse(text, out var number));

        Assert.Equal(other, number.OtherReading is { } reading ? Meaning(reading) : null);
    }

    [Theory]
    [InlineData("H.C. I", "letters", "hors-commerce letters 9 ")]
    [InlineData("H.C. C", "roman", "hors-commerce roman 100 ")]
    [InlineData("C/X", "letters", "numbered letters 3 24")]
    [InlineData("1965", "arabic", "numbered arabic 1965 ")]
    [InlineData("AB", "letters", "numbered letters 28 ")]
    [InlineData("3/12", "roman", "numbered arabic 3 12")]
    [InlineData("T/P A/P", "letters", "trial letters 1 16")]
    [InlineData("H.C. 3", "letters", "hors-commerce arabic 3 ")]
    public void The_notation_expected_settles_a_doubt_and_hides_nothing(string text, string notation, string meaning)
    {
        Assert.True(Notation.TryFind(notation, out var expected));

        Assert.True(PencilledNumber.TryParse(text, expected, out var number, out _));
        Assert.Equal(meaning, Meaning(number));
    }

    [Fact]
    public void Every_number_a_sheet_can_bear_is_read_from_what_it_spells()
    {
        Numbers.Sample(number =>
            PencilledNumber.TryParse(number.ToString(), number.Notation, out var read, out _) && read == number);
    }

    [Fact]
    public void Without_knowing_the_notation_it_is_read_or_told_as_the_other_reading()
    {
        Numbers.Where(number => number.Notation != Notation.Letters || number.Of is null).Sample(number =>
            PencilledNumber.TryParse(number.ToString(), out var read, out _)
                ? read == number || read.OtherReading == number
                : number.Of is null && number.ToString() is { } spelled && (number.Number >= 1_400 || spelled.AsSpan().IndexOfAny("LCDM") >= 0));
    }

    [Fact]
    public void What_is_read_is_read_again_from_what_it_spells()
    {
        Gen.String[Gen.Char["0123456789IVXLCABPTEHDR/. -"], 0, 9].Sample(
            text => !PencilledNumber.TryParse(text, out var read)
                || (PencilledNumber.TryParse(read.ToString(), out var again) && again == read),
            iter: 20_000);
    }

    [Fact]
    public void Any_text_at_all_is_answered()
    {
        Gen.String.Sample(text => PencilledNumber.TryParse(text, out var read, out var why) == (why == PencilReading.Read) && (read is null) == (why != PencilReading.Read));
    }

    [Fact]
    public void The_form_shown_is_made_of_numbers_that_are_read()
    {
        Assert.All(PencilledNumber.Form.Split([", ", " or "], StringSplitOptions.None), example => Assert.True(PencilledNumber.TryParse(example, out _), example));
    }

    [Fact]
    public void A_number_no_sheet_can_bear_is_our_mistake()
    {
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.Numbered, Notation.Arabic, 13, 12));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.Numbered, Notation.Arabic, 0, 12));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.Numbered, Notation.None));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.ArtistsProof, Notation.None, 1));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.ArtistsProof, Notation.Roman));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.ArtistsProof, Notation.None, null, 5));
        Assert.Throws<ArgumentException>(() => new PencilledNumber(NumberingKind.Numbered, Notation.Roman, 1, 4_000));
    }

    // Lettered sheets go from A to Z and carry no size: otherwise one of the edition would bear AP or A/P.
    private static readonly Gen<PencilledNumber> Numbers =
        from kind in Gen.Int[0, NumberingKind.All.Count - 1].Select(i => NumberingKind.All[i])
        from notation in Gen.Int[0, Notation.All.Count - 1].Select(i => Notation.All[i])
        where kind != NumberingKind.Numbered || notation != Notation.None
        from size in Gen.Int[1, Math.Max(1, Math.Min(notation == Notation.Letters ? 26 : notation.Largest, 9_999))]
        from number in Gen.Int[1, size]
        from sized in Gen.Bool
        select notation == Notation.None
            ? new PencilledNumber(kind, notation)
            : new PencilledNumber(kind, notation, number, sized && (kind != NumberingKind.Numbered || notation != Notation.Letters) ? size : null);

    private static string Meaning(PencilledNumber number) => $"{number.Kind} {number.Notation} {number.Number} {number.Of}";
}

public sealed class PencilledNumberInGermanTests() : PencilledNumberTests("de-DE");

public sealed class PencilledNumberInTurkishTests() : PencilledNumberTests("tr-TR");
