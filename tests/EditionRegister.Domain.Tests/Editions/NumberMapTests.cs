using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Editions;

public class NumberMapTests(string culture = "") : InCulture(culture)
{
    private readonly Work _clean = Harbour.Clean();

    [Fact]
    public void Every_number_has_a_cell()
    {
        var map = Map(_clean);

        Assert.Equal(["numbered edition: 1/12 to 12/12", "artist's proof: A/P I/II to A/P II/II", "bon à tirer: B.A.T."], map.Numberings.Select(numbering => $"{numbering.Heading}: {numbering.Span}"));
        Assert.Equal(["hhchahhhhhhh", "hh", "h"], map.Numberings.Select(numbering => string.Concat(numbering.Cells.Select(cell => cell.Letter))));
        Assert.Equal(["1/12", "2/12", "3/12"], map.Numberings[0].Cells.Take(3).Select(cell => cell.Spelled));
        Assert.Equal(["studio › plan chest", "Ivo Brandt", "Tidewater Gallery"], new[] { 0, 2, 4 }.Select(at => map.Numberings[0].Cells[at].Where));
        Assert.Equal(_clean.The("3/12"), map.Numberings[0].Cells[2].Sheet);
    }

    [Fact]
    public void Sheets_beside_the_numbers()
    {
        var work = _clean.With(Harbour.Sheet(120, 20) with { Standing = "held-out" }).With(Harbour.Sheet(121, 21) with { Standing = "pulled" }).With(Harbour.Sheet(122, 22));

        Assert.Equal(
            ["spare", "left out", "held out, not numbered", "pulled, not sorted", "kept, not numbered"],
            Map(work).Beside.Select(cell => cell.Spelled));
    }

    [Fact]
    public void What_it_comes_to()
    {
        Assert.Equal(
            ["edition size 12", "artist's proofs 2", "bons à tirer 1", "total of impressions 15", "spare sheets 1", "sheets left out 1", "accounted for 12 of 12"],
            Totals(_clean));
    }

    [Fact]
    public void Numbers_open_or_not_known_are_not_accounted_for_and_trials_are_told_apart()
    {
        var work = _clean
            .WithEdition(edition => edition with { Numberings = [.. edition.Numberings, Harbour.Numbers(25, 5, "trial", "arabic", 2)] })
            .Without("1/12").Without("2/12").Without("3/12").Without("4/12").Without("5/12")
            .WithNumber("numbered", 2, "never-printed").WithNumber("numbered", 3, "void").WithNumber("numbered", 4, "elsewhere").WithNumber("numbered", 5, "unknown");

        Assert.Equal("onve?hhhhhhh", string.Concat(Map(work).Numberings[0].Cells.Select(cell => cell.Letter)));
        Assert.Equal(
            ["total of impressions 15", "pulled besides, trial proofs 2", "spare sheets 1", "sheets left out 1", "accounted for 10 of 12 (1 open, 1 not known)"],
            Totals(work).TakeLast(5));
        Assert.Equal(
            ["h: here", "o: open, no sheet yet", "n: never printed", "v: void", "e: elsewhere, not in this register", "?: not known"],
            Map(work).Legend.Select(letter => $"{letter.Letter}: {letter.Meaning}"));
    }

    [Fact]
    public void Where_a_sheet_is_and_whose()
    {
        Assert.Equal("h studio › plan chest", Cell(Position.InPlace(Harbour.Drawer), Owner.Known(Harbour.Maker)));
        Assert.Equal("h Mara Quill", Cell(Position.With(Harbour.Maker), Owner.Known(Harbour.Maker)));
        Assert.Equal("a Tidewater Gallery", Cell(Position.With(Harbour.Gallery), Owner.Known(Harbour.Maker)));
        Assert.Equal("a studio, with Tidewater Gallery", Cell(new Position("placed", 1, Harbour.Gallery), Owner.Known(Harbour.Maker)));
        Assert.Equal("s studio › plan chest, belongs to Ivo Brandt", Cell(Position.InPlace(Harbour.Drawer), Owner.Known(Harbour.Buyer)));
        Assert.Equal("s Tidewater Gallery, belongs to Ivo Brandt", Cell(Position.With(Harbour.Gallery), Owner.Known(Harbour.Buyer)));
        Assert.Equal("c Ivo Brandt", Cell(Position.With(Harbour.Buyer), Owner.Known(Harbour.Buyer)));
        Assert.Equal("h studio › plan chest, owner not known", Cell(Position.InPlace(Harbour.Drawer), Owner.Unknown));
        Assert.Equal("? a place not known", Cell(Position.Unknown, Owner.Known(Harbour.Maker)));
        Assert.Equal("x gone for good", Cell(Position.Gone, Owner.Known(Harbour.Maker)));
        Assert.Equal("h place 77", Cell(Position.InPlace(77), Owner.Known(Harbour.Maker)));
    }

    [Fact]
    public void Somebody_elses_edition_shows_what_we_hold()
    {
        var work = _clean with
        {
            Editions = [_clean.Editions[0] with { Extent = "someone-elses", Numberings = [new(21, 1, 1, "numbered", "arabic", 5, "stated", [new(1, 1, 3, "open", null)]), new(22, 1, 2, "artists-proof", "roman", null, "unknown", [])] }],
            Impressions = [Harbour.Sheet(1, 1) with { Numbering = 21, Number = 3, Pencilled = "3/5" }, Harbour.Sheet(2, 2) with { Numbering = 22, Pencilled = "A/P" }],
        };

        Assert.Equal(["??h??", "h"], Map(work).Numberings.Select(numbering => string.Concat(numbering.Cells.Select(cell => cell.Letter))));
        Assert.Equal("A/P", Map(work).Numberings[1].Cells[0].Spelled);
        Assert.Equal(["edition size 5", "artist's proofs not known", "total of impressions not known", "accounted for 1 of 5 (4 not known)"], Totals(work));
    }

    [Fact]
    public void An_open_edition_has_no_end_and_no_size()
    {
        var work = _clean.WithNumbering("numbered", numbering => numbering with { Size = null, SizeState = "open" });

        Assert.Equal(12, Map(work).Numberings[0].Cells.Count);
        Assert.Equal(["1", "2"], Map(work).Numberings[0].Cells.Take(2).Select(cell => cell.Spelled));
        Assert.Equal("edition size not known", Totals(work)[0]);
        Assert.DoesNotContain(Totals(work), total => total.StartsWith("accounted", StringComparison.Ordinal));
    }

    [Fact]
    public void Damage_is_drawn_as_it_is_found()
    {
        var work = Damage.Everywhere();

        Assert.All(work.Editions, edition => Assert.All(NumberMap.Of(work, edition).Numberings, numbering => Assert.InRange(numbering.Cells.Count, 0, 10_200)));
    }

    private string Cell(Position position, Owner owner)
    {
        Impression Moved(Impression sheet) => sheet with { Whereabouts = [sheet.Whereabouts[0] with { To = position, Until = RecordedDate.None }], Ownership = [sheet.Ownership[0] with { To = owner }] };
        var cell = Map(_clean.WithSheet("4/12", Moved)).Numberings[0].Cells[3];

        return $"{cell.Letter} {cell.Where}";
    }

    private static NumberMap Map(Work work) => NumberMap.Of(work, work.Editions[0]);

    private static List<string> Totals(Work work) => [.. Map(work).Totals.Select(total => $"{total.Label} {total.Value}")];
}

public sealed class NumberMapInGermanTests() : NumberMapTests("de-DE");

public sealed class NumberMapInTurkishTests() : NumberMapTests("tr-TR");
