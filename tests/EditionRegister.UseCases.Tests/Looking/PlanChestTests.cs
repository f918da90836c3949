using EditionRegister.Store;
using EditionRegister.Store.Sqlite;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

public sealed class PlanChestTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;

    public PlanChestTests() => _demo = new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("demo")));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_first_list_stands_before_the_sheets_are_read()
    {
        var chest = _demo.PlanChest;

        chest.Open();

        Assert.Equal(new LeafedThrough(_demo).Find("").Select(line => line with { Sheets = 0, Here = 0, Away = 0, Sold = 0 }), chest.Find(null));
        Assert.Equal(_demo.LookAround.Head(), chest.Head);
        Assert.False(chest.SheetsAreRead);
        Assert.Single(chest.Find("harb"));
        Assert.Empty(chest.Find("drawer"));
    }

    [Fact]
    public void A_line_says_what_there_is_of_an_edition_and_where_it_went()
    {
        var chest = Read(_demo);

        var line = Assert.Single(chest.Find("harbour at low"));

        // The demo's story: twelve, two artist's proofs and four progressive ones; 3 and 6 sold, 5 and 7 still with the gallery, 8 back in its drawer.
        Assert.Equal(("limited", "whole", "12 + 2 A/P + 4 progressive proofs"), (line.Kind, line.Extent, line.Numberings));
        Assert.Equal((18, 14, 2, 2), (line.Sheets, line.Here, line.Away, line.Sold));
    }

    [Fact]
    public void Every_word_is_found_wherever_a_reader_finds_it_in_the_same_order()
    {
        SomeDeeds.DoAll(_demo);
        var chest = Read(_demo);
        LeafedThrough leafed = new(_demo);
        TypedWords typed = new(leafed.Bits, seed: 1);

        for (var round = 0; round < Depth.Of(600, 3_000, 30_000); round++)
        {
            var text = typed.Next();

            Assert.True(leafed.Find(text).SequenceEqual(chest.Find(text)), text);
        }
    }

    [Theory]
    [InlineData("-")]
    [InlineData("")]
    [InlineData(" \t\u00A0 ")]
    [InlineData("\uD800")]
    [InlineData("%")]
    [InlineData("¨")]
    [InlineData("f5g3‑wygn")]
    [InlineData("0")]
    public void Odd_keys_find_what_a_reader_finds(string text)
    {
        var chest = Read(_demo);

        var found = chest.Find(text);

        Assert.Equal(new LeafedThrough(_demo).Find(text.Replace('\u2011', '-')), found);
    }

    [Fact]
    public void What_another_program_wrote_is_taken_up_and_what_was_found_before_stays_as_it_was()
    {
        var chest = Read(_demo);
        var before = chest.Find(null);
        var lines = before.ToList();
        Assert.False(chest.Refresh());

        SomeDeeds.DoAll(Register.Open(_demo.Folder));

        Assert.True(chest.Refresh());
        Same(chest);
        Assert.Equal(lines, before);
        Assert.False(chest.Refresh());
    }

    [Fact]
    public void Each_single_deed_is_taken_up()
    {
        var chest = Read(_demo);
        var other = Register.Open(_demo.Folder);

        foreach (var deed in SomeDeeds.Of(other))
        {
            deed();

            Assert.True(chest.Refresh());
            Same(chest);
        }
    }

    [Fact]
    public void A_file_put_in_the_place_of_another_is_read_anew()
    {
        var kept = _folder.In("kept.db");
        File.Copy(_demo.Folder.Database, kept);
        _demo.EditWork.Run(1, "One way", null, null);
        var chest = Read(_demo);

        File.Copy(kept, _demo.Folder.Database, overwrite: true);
        _demo.EditWork.Run(1, "Another way", null, null);

        Assert.True(chest.Refresh());
        Assert.Single(chest.Find("another way"));
        Assert.Empty(chest.Find("one way"));
    }

    [Fact]
    public void What_lies_in_a_place_that_somebody_else_keeps_is_away_and_what_the_keeper_of_the_register_has_is_here()
    {
        using TempRegister temp = new();
        SmallEdition.Make(temp.Register);
        temp.Register.RecordPlace.Run("Quay › Back room", keeper: 2);
        temp.Register.PutAway.Run(SmallEdition.Numbers("1-2"), "Back room");
        temp.Register.Consign.Run(SmallEdition.Numbers("3"), "Quay Gallery");

        var theMakers = Assert.Single(Read(temp.Register).Find("harbour"));
        var theGallerys = Assert.Single(Read(Register.Open(temp.Register.Folder, by: 2)).Find("harbour"));

        Assert.Equal((5, 2, 3, 0), (theMakers.Sheets, theMakers.Here, theMakers.Away, theMakers.Sold));
        Assert.Equal((5, 5, 0, 0), (theGallerys.Sheets, theGallerys.Here, theGallerys.Away, theGallerys.Sold));
    }

    [Theory]
    [InlineData("work", "title_state")]
    [InlineData("work_role", "person")]
    [InlineData("edition", "ordinal")]
    [InlineData("edition", "work")]
    [InlineData("numbering", "kind")]
    [InlineData("numbering", "notation")]
    [InlineData("print_run", "work")]
    [InlineData("impression", "code")]
    [InlineData("impression", "run")]
    [InlineData("whereabouts", "to_state")]
    [InlineData("whereabouts", "ordinal")]
    [InlineData("ownership", "kind")]
    [InlineData("person", "what")]
    public void A_damaged_file_still_has_a_chest(string table, string column)
    {
        Tampering.Break(_demo.Folder, $"""
            PRAGMA writable_schema=ON;
            UPDATE sqlite_schema SET sql = replace(replace(sql, 'TEXT    NOT NULL', 'TEXT'), 'INTEGER NOT NULL', 'INTEGER') WHERE name = '{table}';
            PRAGMA writable_schema=RESET;
            DROP INDEX IF EXISTS impression_number;
            UPDATE {table} SET {column} = NULL;
            """);

        var chest = Read(_demo);

        Assert.NotEmpty(chest.Find(""));
        Assert.All(chest.Find("a"), line => Assert.NotNull(line.Title + line.Makers + line.Numberings));
        Assert.False(chest.Refresh());
    }

    [Fact]
    public void An_empty_register_has_an_empty_chest()
    {
        using TempRegister temp = new();

        var chest = Read(temp.Register);

        Assert.Empty(chest.Find(""));
        Assert.Empty(chest.Find("a"));
    }

    [Fact]
    public async Task Any_thread_may_look_while_another_reads()
    {
        var chest = Read(_demo);
        using CancellationTokenSource enough = new();
        var looking = Task.Run(() =>
        {
            var looks = 0;

            for (; !enough.IsCancellationRequested; looks++)
            {
                Assert.NotEmpty(chest.Find("tolland harb"));
            }

            return looks;
        });

        for (var i = 0; i < 20; i++)
        {
            _demo.EditWork.Run(2, FormattableString.Invariant($"Title {i}"), null, null);
            chest.Refresh();
        }

        await enough.CancelAsync();
        Assert.True(await looking > 0);
    }

    private static PlanChest Read(Register register)
    {
        var chest = register.PlanChest;
        chest.Open();
        chest.ReadSheets();

        return chest;
    }

    /// <summary>As a chest that is opened now.</summary>
    private void Same(PlanChest chest)
    {
        LeafedThrough leafed = new(_demo);
        TypedWords typed = new(leafed.Bits, seed: 2);
        Assert.Equal(leafed.Find(""), chest.Find(""));

        for (var i = 0; i < 40; i++)
        {
            var text = typed.Next();

            Assert.True(leafed.Find(text).SequenceEqual(chest.Find(text)), text);
        }
    }
}
