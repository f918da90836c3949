using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.ReadingIn;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Tests.ReadingIn;

/// <summary>What comes of cells with words in the columns of number, edition size and inscription.</summary>
public sealed class ReadInWordsTests : IDisposable
{
    private readonly TempRegister _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData("Épreuve d'artiste 3/10", "artists-proof arabic 3", "A/P 1/10 to A/P 10/10")]
    [InlineData("P.d.A. II/V", "artists-proof roman 2", "A/P I/V to A/P V/V")]
    [InlineData("Exemplar 3/40", "numbered arabic 3", "1/40 to 40/40")]
    [InlineData("3/40 signed and dated", "numbered arabic 3", "1/40 to 40/40")]
    [InlineData("32/at least 49", "numbered arabic 32", "numbered edition, of at least 49")]
    [InlineData("5/c. 20", "numbered arabic 5", "numbered edition, of about 20")]
    [InlineData("edition no. 7", "numbered arabic 7", "numbered edition, size unknown")]
    [InlineData("5/unlimited", "numbered arabic 5", "numbered edition, open")]
    [InlineData("bon à tirer", "bon-a-tirer none 1", "B.A.T.")]
    [InlineData("AP/160", "artists-proof none -", "1/160 to 160/160; artist's proof, size unknown")]
    [InlineData("A/P 3, edition of 75", "artists-proof arabic 3", "1/75 to 75/75; artist's proof, size unknown")]
    [InlineData("printer's proof", "printers-proof none -", "printer's proof, size unknown")]
    public void A_number_in_words_is_given_with_its_kind_and_stays_as_written(string cell, string given, string numberings)
    {
        ReadOne("number", cell);

        var (work, sheet) = Only();
        var numbering = work.NumberingOf(sheet)!;
        Assert.Equal((cell, given), (sheet.Pencilled, $"{numbering.KindWord} {numbering.NotationWord} {sheet.Number?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"}"));
        Assert.Equal(numberings, string.Join("; ", work.Editions.Single().Numberings.Select(one => one.Span)));
        Assert.Empty(sheet.Inscriptions);
        Assert.NotNull(sheet.PencilSays);
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Theory]
    [InlineData("S/P 3/10", "S/P means a state proof to one workshop and a special proof to another")]
    [InlineData("etching, proof", "it says that it is a proof, and not of which kind")]
    [InlineData("working proof 2", "the register has no kind of numbering for working proof")]
    [InlineData("edition of 75", "it says how many there are, and not which this is")]
    [InlineData("second state of three", "it names a state, and no number")]
    [InlineData("unnumbered", "it says that there is no number")]
    [InlineData("Exemplar 13/12", "a sheet cannot have a number above its edition's size, or none")]
    [InlineData("3(?)/25", "a question mark stands beside the number")]
    [InlineData("near the window", "no number can be read in it")]
    public void What_names_no_number_is_kept_as_an_inscription_and_the_preview_says_why(string cell, string why)
    {
        var report = ReadOne("number", cell);

        var (_, sheet) = Only();
        Assert.Equal((null, cell), (sheet.Pencilled, Assert.Single(sheet.Inscriptions).Text));
        Assert.Equal($"line 2, number “{cell}”: is kept as the inscription, and the number is unknown: {why}", Assert.Single(report.Remarks).ToString());
        Assert.Empty(report.Readings);
    }

    [Fact]
    public void A_number_in_words_on_a_sheet_that_bears_none_is_an_inscription_and_a_plain_one_a_problem()
    {
        var words = _temp.Register.ReadIn.Preview(_temp.File("words.csv", "title,maker,standing,number\nHarbour,Mira Tolland,spare,Exemplar 3/40\n"), []);
        var plain = _temp.Register.ReadIn.Preview(_temp.File("plain.csv", "title,maker,standing,number\nHarbour,Mira Tolland,spare,3/40\n"), []);

        Assert.Equal("line 2, number “Exemplar 3/40”: is kept as the inscription, and the number is unknown: a sheet that is spare bears no number", Assert.Single(words.Remarks).ToString());
        Assert.Empty(words.Problems);
        Assert.Single(plain.Problems);
    }

    [Theory]
    [InlineData("75", "1/75 to 75/75", "limited", null)]
    [InlineData("75 plus 10 A/P", "1/75 to 75/75; A/P I/X to A/P X/X", "limited", "75 plus 10 A/P")]
    [InlineData("edition of 75 + X AP", "1/75 to 75/75; A/P I/X to A/P X/X", "limited", "edition of 75 + X AP")]
    [InlineData("edition of 75, 1-10 APs, 2 PPs, 1 BAT", "1/75 to 75/75; A/P 1/10 to A/P 10/10; P/P I/II to P/P II/II; B.A.T.", "limited", "edition of 75, 1-10 APs, 2 PPs, 1 BAT")]
    [InlineData("75 plus 3 working proofs", "1/75 to 75/75", "limited", "75 plus 3 working proofs")]
    [InlineData("tirage à 30 exemplaires", "1/30 to 30/30", "limited", "tirage à 30 exemplaires")]
    [InlineData("at least 49", "numbered edition, of at least 49", "limited", "at least 49")]
    [InlineData("c. 50", "numbered edition, of about 50", "limited", "c. 50")]
    [InlineData("less than 100", "numbered edition, of at most 99", "limited", "less than 100")]
    [InlineData("open", "numbered edition, open", "open", null)]
    [InlineData("unlimited", "numbered edition, open", "open", "unlimited")]
    [InlineData("unnumbered", "numbered edition, size unknown", "unknown", "unnumbered")]
    [InlineData("unique", "1/1", "unique", "unique")]
    public void An_edition_size_in_words_makes_size_and_numberings_and_stays_as_written(string cell, string numberings, string kind, string? statement)
    {
        ReadOne("edition size", cell);

        var edition = Only().Work.Editions.Single();
        Assert.Equal((numberings, kind, statement), (string.Join("; ", edition.Numberings.Select(one => one.Span)), edition.Kind, edition.Statement));
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Theory]
    [InlineData("many")]
    [InlineData("3/75")]
    [InlineData("0")]
    [InlineData("S/P")]
    public void An_edition_size_that_says_none_keeps_the_file_out(string cell)
    {
        var report = _temp.Register.ReadIn.Preview(_temp.File("list.csv", $"title,maker,edition size\nHarbour,Mira Tolland,\"{cell}\"\n"), []);

        Assert.Equal($"line 2, edition size “{cell}”: is no size; write 75, at least 49, c. 50, open, or edition of 75 plus 10 artist's proofs, or unknown.", Assert.Single(report.Problems).ToString());
    }

    [Fact]
    public void Proofs_that_are_listed_and_stated_are_one_numbering()
    {
        _temp.Register.ReadIn.Run(_temp.File("list.csv", "title,maker,number,edition size\nHarbour,Mira Tolland,3,75 plus 10 A/P\nHarbour,Mira Tolland,A/P II,75 plus 10 A/P\n"), []);

        var edition = Assert.Single(Assert.Single(_temp.Register.LookAround.Works()).Editions);
        Assert.Equal("1/75 to 75/75; A/P I/X to A/P X/X", string.Join("; ", edition.Numberings.Select(one => one.Span)));
        Assert.Empty(_temp.Register.CheckRegister.Run());
    }

    [Fact]
    public void A_state_in_the_number_column_is_the_runs_where_no_other_column_says_it()
    {
        _temp.Register.ReadIn.Run(_temp.File("list.csv", "title,maker,number,state\nHarbour,Mira Tolland,\"A/P 2/5, second state of three\",\nHarbour,Mira Tolland,\"A/P 3/5, second state of three\",before letters\nHarbour,Mira Tolland,first state,\n"), []);

        Assert.Equal(["second state of three", "before letters", "first state"], Assert.Single(_temp.Register.LookAround.Works()).Runs.Select(run => run.State));
    }

    [Fact]
    public void An_inscription_is_read_and_stays_as_written()
    {
        var report = ReadOne("inscription", "Épreuve d'artiste 3/10 ⏎ A. Brandt del., B. Okker sc.");

        var inscription = Assert.Single(Only().Sheet.Inscriptions);
        Assert.Equal(("proof", "A/P", 3, 10), (inscription.Says!.Kind, inscription.Says.Series, inscription.Says.Number, inscription.Says.Size));
        Assert.Equal([("drew", "A. Brandt"), ("engraved", "B. Okker")], inscription.Roles.Select(role => (role.Role, role.Name)));
        Assert.Equal("“Épreuve d'artiste 3/10 ⏎ A. Brandt del., B. Okker sc.” read as artist's proof 3 of 10; drawn by A. Brandt, engraved by B. Okker", Assert.Single(report.Readings).ToString());
    }

    [Fact]
    public void The_preview_counts_every_text_and_shows_twenty_different_ones()
    {
        var rows = string.Concat(Enumerable.Range(1, 22).Select(n => FormattableString.Invariant($"Harbour,Mira Tolland,Exemplar {n}/40\n")));
        var file = _temp.File("list.csv", $"title,maker,number\n{rows}Weir,Mira Tolland,printer's proof\nWeir,Mira Tolland,printer's proof\n");

        var report = _temp.Register.ReadIn.Preview(file, []);

        Assert.Equal("24 texts were read in words:", ReadInShown.ReadInWords(report));
        Assert.Equal(21, ReadInShown.Readings(report).Count);
        Assert.Equal("  “Exemplar 1/40” read as number 1 of an edition of 40", ReadInShown.Readings(report)[0]);
        Assert.Equal("  and 3 more.", ReadInShown.Readings(report)[^1]);
        Assert.Equal(("printer's proof", 2), ReadInShown.Different(report).Select(one => (one.Read.Text, one.Times)).Last());
    }

    [Fact]
    public void A_file_with_words_exported_read_in_and_exported_again_is_the_same_bytes()
    {
        using TempRegister other = new();
        _temp.Register.ReadIn.Run(_temp.File("list.csv",
            "title,maker,number,edition size,inscription\n" +
            "Harbour,Mira Tolland,Épreuve d'artiste 3/10,75 plus 10 A/P,\n" +
            "Harbour,Mira Tolland,\"A/P 2/10, second state\",75 plus 10 A/P,\"A. Brandt del., B. Okker sc.\"\n" +
            "Harbour,Mira Tolland,Exemplar 3/75,75 plus 10 A/P,für Anna\n" +
            "Weir,Mira Tolland,32/at least 49,,\n" +
            "Weir,Mira Tolland,no idea,,seen in 2011\n" +
            "Sluice,Mira Tolland,AP/160,,\n" +
            "Dyke,Mira Tolland,5/unlimited,,\n" +
            "Môle,Mira Tolland,,c. 50,\n" +
            "Pier,Mira Tolland,,unnumbered,\n"), []);
        InventoryChoice all = new() { Owners = true };
        _temp.Register.ExportInventory.Run(all, _temp.In("first.csv"));

        other.Register.ReadIn.Run(_temp.In("first.csv"), []);
        other.Register.ExportInventory.Run(all, other.In("second.csv"));

        Assert.Equal(File.ReadAllText(_temp.In("first.csv")), File.ReadAllText(other.In("second.csv")));
        Assert.Contains(",at least 49,", File.ReadAllText(other.In("second.csv")), StringComparison.Ordinal);
        Assert.Empty(other.Register.CheckRegister.Run());
        Assert.Equal(Readings(_temp), Readings(other));
    }

    [Fact]
    public void What_was_read_is_undone_with_the_file()
    {
        var file = _temp.File("list.csv", "title,maker,number,edition size,inscription\nHarbour,Mira Tolland,Épreuve d'artiste 3/10,75 plus 10 A/P,\"A. Brandt del., B. Okker sc.\"\n");
        var batch = _temp.Register.ReadIn.Run(file, []).Batch!.Value;

        _temp.Register.UndoBatch.Run(batch);

        Assert.Empty(_temp.Register.LookAround.Works());
        Assert.Empty(_temp.Register.CheckRegister.Run());
        Assert.Equal(0, _temp.Count("inscription_role"));
        _temp.Register.ReadIn.Run(file, []);
        Assert.Equal(2, Only().Sheet.Inscriptions[0].Roles.Count);
    }

    private static List<string> Readings(TempRegister temp) =>
    [
        .. temp.Register.LookAround.Works().SelectMany(work => work.Impressions).OrderBy(sheet => sheet.Code, StringComparer.Ordinal)
            .Select(sheet => $"{sheet.ShownCode} {sheet.PencilSays} {string.Concat(sheet.Inscriptions.SelectMany(one => one.Roles).Select(role => $"{role.Role} {role.Name}, "))}"),
    ];

    private ReadInReport ReadOne(string column, string cell) =>
        _temp.Register.ReadIn.Run(_temp.File("list.csv", $"title,maker,{column}\nHarbour,Mira Tolland,\"{cell}\"\n"), []);

    private (Domain.Works.Work Work, Domain.Impressions.Impression Sheet) Only()
    {
        var work = Assert.Single(_temp.Register.LookAround.Works());

        return (work, Assert.Single(work.Impressions));
    }
}
