using EditionRegister.Domain;
using EditionRegister.Domain.Integrity;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Tests.ReadingIn;

public sealed class ReadInTests : IDisposable
{
    private const string Header = "Artist,Title,Number,Edition size,Signed,Drawer,Price,Currency,Shelf mark\r\n";

    private readonly TempRegister _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Takes_columns_by_their_headers_and_keeps_the_rest_as_written()
    {
        var file = _temp.File("list.csv", Header + "Mira Tolland,Harbour,3/12,12,yes,Plan chest › 3,180.00,EUR,K-7\r\nMira Tolland,Harbour,A/P I/II,12,no,,,,\r\n");

        var report = _temp.Register.ReadIn.Run(file, []);

        var work = Assert.Single(_temp.Register.LookAround.Works());
        Assert.Equal(2, report.Rows);
        Assert.Equal(["3/12", "A/P I/II"], work.Impressions.Select(work.NumberOf));
        Assert.Equal(["1/12 to 12/12", "A/P I/II to A/P II/II"], work.Editions.Single().Numberings.Select(numbering => numbering.Span));
        Assert.Equal(("Shelf mark", "K-7"), work.Impressions[0].KeptColumns.Select(kept => (kept.Header, kept.Value)).Single());
        Assert.Equal("Plan chest › 3", work.Book.PathOf(work.Impressions[0].Where!.Place));
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Fact]
    public void Reads_semicolons_and_a_byte_order_mark()
    {
        var file = _temp.File("liste.csv", "\uFEFFtitle;maker;number\nÉtude;Mira Tolland;1/3\n");

        _temp.Register.ReadIn.Run(file, []);

        Assert.Equal("Étude", _temp.Register.LookAround.Works().Single().Title);
    }

    [Fact]
    public void Names_every_bad_value_by_line_column_and_value_and_reads_nothing_in()
    {
        var file = _temp.File(
            "bad.csv",
            "Artist,Title,Number,Edition size,Signed,Price,Code\r\n" +
            "Mira Tolland,\"Harbour\r\nat dusk\",13/12,12,yes,\"1,200\",\r\n" +
            "Mira Tolland,Harbour,4/12,12,perhaps,180,7KQ4-M2X4\r\n" +
            "Mira Tolland,Harbour,4/12,many,no,180,\r\n" +
            "Mira Tolland,Harbour,4/12,12,no,180,\r\n");

        var refused = Assert.Throws<RefusedException>(() => _temp.Register.ReadIn.Run(file, []));

        Approved.Is(refused.Message, "EditionRegister.UseCases.Tests", "ReadingIn", "bad-rows.txt");
        Assert.Empty(_temp.Register.LookAround.Works());
        Assert.Equal(1, _temp.Register.LookAround.Head().N);
    }

    [Fact]
    public void The_same_bytes_a_second_time_add_nothing()
    {
        var file = _temp.File("list.csv", "title,maker,number\nHarbour,Mira Tolland,1/3\n");
        _temp.Register.ReadIn.Run(file, []);
        var before = _temp.Register.LookAround.Head();

        var again = _temp.Register.ReadIn.Run(_temp.File("copy of list.csv", File.ReadAllText(file)), []);

        Assert.True(again.WasReadBefore);
        Assert.Equal(before, _temp.Register.LookAround.Head());
    }

    [Fact]
    public void A_preview_changes_nothing_and_shows_guesses_remarks_and_problems()
    {
        var file = _temp.File("list.csv", "title,maker,number,Wall\nHarbour,Mira Tolland,no idea,north\nHarbour,Mira Tolland,0/3,south\n");

        var preview = _temp.Register.ReadIn.Preview(file, ["Wall=place"]);

        Assert.Equal(["title", "maker", "number", "place"], preview.Columns.Select(match => match.Column?.Name));
        Assert.Equal("line 2, number “no idea”: is kept as the inscription, and the number is unknown: no number can be read in it", Assert.Single(preview.Remarks).ToString());
        Assert.Equal(3, Assert.Single(preview.Problems).Line);
        Assert.Equal(1, _temp.Register.LookAround.Head().N);
    }

    [Fact]
    public void A_second_file_adds_to_the_edition_the_first_one_made()
    {
        _temp.Register.ReadIn.Run(_temp.File("a.csv", "title,maker,number\nHarbour,Mira Tolland,1/3\n"), []);

        _temp.Register.ReadIn.Run(_temp.File("b.csv", "title,maker,number\nHarbour,mira tolland,3/3\n"), []);

        var work = _temp.Register.LookAround.Works().Single();
        Assert.Equal(["1/3", "3/3"], work.Impressions.Select(work.NumberOf));
        Assert.Single(work.Editions);
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Fact]
    public void A_number_given_already_is_refused_by_line()
    {
        _temp.Register.ReadIn.Run(_temp.File("a.csv", "title,maker,number\nHarbour,Mira Tolland,1/3\n"), []);
        var file = _temp.File("b.csv", "title,maker,number\nHarbour,Mira Tolland,2/3\nHarbour,Mira Tolland,1/3\n");

        var refused = Assert.Throws<RefusedException>(() => _temp.Register.ReadIn.Run(file, []));

        Assert.Equal("b.csv was not read in, because of 1 thing. Nothing was changed. Put it right and read the file in again.\n  line 3, number “1/3”: is given in this register already.", refused.Message);
    }

    [Fact]
    public void Undone_and_read_in_again_a_file_takes_its_own_codes_back()
    {
        var file = _temp.File("a.csv", "code,title,maker,number\n7KQ4-M2X3,Harbour,Mira Tolland,1/3\n");
        var batch = _temp.Register.ReadIn.Run(file, []).Batch!.Value;

        var undone = _temp.Register.UndoBatch.Run(batch);
        _temp.Register.ReadIn.Run(file, []);

        Assert.Equal(1, undone);
        Assert.Equal("7KQ4-M2X3", _temp.Register.LookAround.Impression("7kq4m2x3").Impression.ShownCode);
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Fact]
    public void What_was_built_on_is_not_undone()
    {
        var batch = _temp.Register.ReadIn.Run(_temp.File("a.csv", "code,title,maker,number\n7KQ4-M2X3,Harbour,Mira Tolland,1/3\n"), []).Batch!.Value;
        _temp.Register.RecordPlace.Run("Studio");
        _temp.Register.PutAway.Run(ImpressionChoice.OfCode("7KQ4-M2X3"), "Studio");

        var refused = Assert.Throws<RefusedException>(() => _temp.Register.UndoBatch.Run(batch));

        Assert.Equal("Batch 1 cannot be undone: something was built on it since (7KQ4-M2X3). Nothing was changed. Put single things right instead.", refused.Message);
    }

    [Fact]
    public void Museum_inscriptions_come_in_as_numbers_where_they_name_one_and_as_written_where_not()
    {
        var file = MuseumSpreadsheet.Make(_temp);

        var report = _temp.Register.ReadIn.Run(file, ["text=number"]);

        var sheets = _temp.Register.LookAround.Works().SelectMany(work => work.Impressions.Select(sheet => (work, sheet))).ToList();
        Assert.Equal(343, report.Rows);
        Assert.Equal(17, report.Remarks.Count);
        Assert.Equal(["“10/20 Harriet” read as number 10 of an edition of 20", "“Steinlen / 2/10” read as number 2 of an edition of 10", "“Cloth vs Steel 22/25” read as number 22 of an edition of 25"], report.Readings.Select(one => one.ToString()));
        Assert.Equal(326, sheets.Count(pair => pair.sheet.Number is not null));
        Assert.Equal(17, sheets.Count(pair => pair.sheet.Number is null && pair.sheet.Inscriptions.Count == 1));
        Assert.All(sheets, pair => Assert.Equal(("unknown", "unknown"), (pair.work.TitleState, pair.work.MakerState)));
        Assert.DoesNotContain(_temp.Register.CheckRegister.Run(), finding => finding.Severity == Severity.Contradiction);
    }
}
