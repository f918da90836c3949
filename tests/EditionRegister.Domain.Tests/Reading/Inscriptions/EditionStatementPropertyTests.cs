using CsCheck;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;

namespace EditionRegister.Domain.Tests.Reading.Inscriptions;

/// <summary>What holds for any text, and for any statement that can be said.</summary>
public sealed class EditionStatementPropertyTests
{
    private static readonly string[] Words =
    [
        "3/12", "IV/X", "1", "12", "2026", "?", "/", "-", "(", ")", "[", "\"", "'", "#", ".", ",", "|", " / ", "edition of ", "ed. ", "no. ", "A/P ", "A. P. ", "h.c. ", "AP", "épreuve d'artiste ", "e\u0301preuve ",
        "proof ", "second ", "2nd ", "or ", "state ", "II", "of ", "at least ", "between ", "and ", "c. ", "less than ", "impressions ", "imp. ", "in. ", "3 1/2\" ", "vol. 3 ", "March ", "S/P ", "copy ", "unlimited ", "plus ", "+ ", "I-X ", "APs ", "\uD800", "\uDC00", "\0", "\u2044", "\u23CE", "\uFEFF", "ß", "ı", "Harbour ",
    ];

    private static readonly Gen<string> Sentences = One(Words).Array[0, 14].Select(string.Concat);

    private static readonly Gen<string> Characters = Gen.Char.Array[0, 60].Select(letters => new string(letters));

    [Fact]
    public void Any_text_is_read_without_a_fault_and_the_span_lies_within_it()
    {
        Gen.OneOf(Sentences, Characters).Sample(Holds, iter: 20_000);
    }

    [Theory]
    [InlineData("1/")]
    [InlineData("I/")]
    [InlineData("edition of ")]
    [InlineData("((((")]
    [InlineData("second or ")]
    [InlineData("7")]
    [InlineData("X")]
    [InlineData("A.")]
    [InlineData("\"")]
    [InlineData("\uD800")]
    [InlineData("\0")]
    [InlineData("e\u0301")]
    public void Sixty_four_kilobytes_of_one_thing_are_read_without_a_fault(string unit)
    {
        Assert.True(Holds(string.Concat(Enumerable.Repeat(unit, 65_536 / unit.Length))));
    }

    [Fact]
    public void What_is_read_of_any_text_and_written_reads_as_the_same_again()
    {
        Sentences.Sample(
            text =>
            {
                var read = EditionStatementReader.Read(text);

                return read.Kind is StatementKind.None or StatementKind.Declined || StatementValues.Of(EditionStatementReader.Read(read.Write())) == StatementValues.Of(read);
            },
            iter: 20_000);
    }

    [Fact]
    public void Any_statement_that_can_be_said_is_written_and_read_as_the_same()
    {
        Statements.Sample(said => StatementValues.Of(EditionStatementReader.Read(said.Write())) == StatementValues.Of(said), iter: 20_000, print: said => $"{StatementValues.Of(said)} «{said.Write()}» {StatementValues.Of(EditionStatementReader.Read(said.Write()))}");
    }

    [Fact]
    public void What_the_register_writes_of_a_numbered_sheet_is_read_as_it_is_meant()
    {
        Pencilled.Sample(
            number =>
            {
                var read = EditionStatementReader.Read(number.ToString());

                return SeriesKinds.KindOf(read.Series) == number.Kind && read.Number == number.Number && read.Of == number.Of && read.NumberIsRoman == (number.Notation == Notation.Roman);
            },
            iter: 5_000,
            print: number => $"{number} {StatementValues.Of(EditionStatementReader.Read(number.ToString()))}");
    }

    private static Gen<EditionStatement> Statements =>
        from kind in One(StatementKind.Numbered, StatementKind.Proof, StatementKind.State, StatementKind.Size, StatementKind.Open)
        from series in One("A/P", "P/P", "H.C.", "B.A.T.", "T/P", "C.T.P.", "W/P", "state proof", "stage proof", "Tamarind impression", "legal deposit", "proof", "publisher's proof")
        from roman in Gen.Bool
        from of in Gen.Int[2, roman ? 49 : 4_000]
        from number in Gen.Int[1, of]
        from size in Gen.Int[0, 3]
        from hedge in One(SizeHedge.None, SizeHedge.AtLeast, SizeHedge.About)
        from doubted in Gen.Bool
        from state in Gen.Int[0, 9]
        from stateOf in Gen.Int[state, 9]
        from stateRoman in Gen.Bool
        from beside in Gen.Select(One("A/P", "H.C.", "Tamarind impression", "workshop proof"), Gen.Int[1, 30]).Array[0, 2]
        select Expressible(kind, series, roman, of, number, size, hedge, doubted, state, stateOf, stateRoman, [.. beside.Select(one => new StatedProofs(one.Item1, one.Item2))]);

    /// <summary>What one inscription can say; a copy's number without its size has no notation of its own in the edition's words, and a state needs a figure.</summary>
    private static EditionStatement Expressible(StatementKind kind, string series, bool roman, int of, int number, int size, SizeHedge hedge, bool doubted, int state, int stateOf, bool stateRoman, StatedProofs[] beside)
    {
        var isCopy = kind is StatementKind.Numbered or StatementKind.Proof;
        var hasSize = size < 2 && kind is not (StatementKind.State or StatementKind.Open);
        var bounds = size == 2 && kind is not (StatementKind.State or StatementKind.Open) ? new SizeBounds(number < of ? number : null, of) : (SizeBounds?)null;
        var hasNumber = isCopy && (kind == StatementKind.Numbered || number % 3 > 0) && (hasSize || bounds is not null || !roman);
        var known = hasNumber ? (bounds is null ? number : Math.Min(number, bounds.Value.Least ?? of)) : (int?)null;
        var isRoman = roman && bounds is null && kind is not (StatementKind.State or StatementKind.Open) && (hasSize || known is not null);

        return new EditionStatement
        {
            Kind = kind,
            Series = kind is StatementKind.Numbered or StatementKind.Size ? "edition" : kind == StatementKind.Proof ? series : null,
            Number = kind == StatementKind.Size || (!hasNumber && kind != StatementKind.Numbered) ? null : known ?? number,
            Of = hasSize || (kind == StatementKind.Size && bounds is null) ? of : null,
            Hedge = bounds is { Least: null } ? SizeHedge.AtMost : bounds is not null ? SizeHedge.About : hasSize || kind == StatementKind.Size ? hedge : SizeHedge.None,
            Bounds = bounds,
            NumberIsDoubted = doubted && known is not null && hasSize,
            NumberIsRoman = isRoman,
            State = state > 0 || kind == StatementKind.State ? Math.Max(1, state) : null,
            StateOf = stateOf > Math.Max(1, state) && (state > 0 || kind == StatementKind.State) ? stateOf : null,
            StateIsRoman = stateRoman && (state > 0 || kind == StatementKind.State),
            Beside = kind is StatementKind.Open or StatementKind.State ? [] : beside,
        };
    }

    // A bare number or letter may be anything to a reader of free text, and L/C somebody's initials; only what a mark or a size stands beside is compared.
    private static Gen<PencilledNumber> Pencilled =>
        from kind in One([.. NumberingKind.All])
        from notation in One(Notation.Arabic, Notation.Roman)
        from of in Gen.Int[2, 150]
        from number in Gen.Int[1, of]
        from sized in Gen.Bool
        let isInitials = kind == NumberingKind.Numbered && notation == Notation.Roman && of % 50 == 0 && number % 50 == 0
        select new PencilledNumber(kind, isInitials ? Notation.Arabic : notation, sized || kind == NumberingKind.Numbered ? number : Math.Min(number, 20), sized || kind == NumberingKind.Numbered ? of : null);

    private static Gen<T> One<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(at => of[at]);

    private static bool Holds(string text)
    {
        var read = EditionStatementReader.Read(text);
        var (offset, length) = read.Span.GetOffsetAndLength(text.Length);
        var isNothing = read.Kind is StatementKind.None or StatementKind.Declined;

        return offset >= 0 && offset + length <= text.Length && (isNothing ? length == 0 : length > 0)
            && (read.Kind == StatementKind.Declined) == (read.WhyNot is not null)
            && read.Left.All(piece => text.Contains(piece, StringComparison.Ordinal))
            && !(read.Number > read.Of) && read.Number is not < 1;
    }
}
