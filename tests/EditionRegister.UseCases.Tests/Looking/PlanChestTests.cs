using EditionRegister.Store.Sqlite;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

public sealed class PlanChestTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;

    public PlanChestTests() => _demo = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));

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
        var chest = _demo.ReadChest();

        var line = Assert.Single(chest.Find("harbour at low"));

        // The demo's story: twelve, two artist's proofs and four progressive ones; 3 and 6 sold, 5 and 7 still with the gallery, 8 back in its drawer.
        Assert.Equal(("limited", "whole", "12 + 2 A/P + 4 progressive proofs"), (line.Kind, line.Extent, line.Numberings));
        Assert.Equal((18, 14, 2, 2), (line.Sheets, line.Here, line.Away, line.Sold));
    }

    [Fact]
    public void Every_word_is_found_wherever_a_reader_finds_it_in_the_same_order()
    {
        SomeDeeds.DoAll(_demo);
        var chest = _demo.ReadChest();
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
        var chest = _demo.ReadChest();

        var found = chest.Find(text);

        Assert.Equal(new LeafedThrough(_demo).Find(text.Replace('\u2011', '-')), found);
    }

    [Fact]
    public void What_lies_in_a_place_that_somebody_else_keeps_is_away_and_what_the_keeper_of_the_register_has_is_here()
    {
        using TempRegister temp = new();
        SmallEdition.Make(temp.Register);
        temp.Register.RecordPlace.Run("Quay › Back room", keeper: 2);
        temp.Register.PutAway.Run(SmallEdition.Numbers("1-2"), "Back room");
        temp.Register.Consign.Run(SmallEdition.Numbers("3"), "Quay Gallery");

        var theMakers = Assert.Single(temp.Register.ReadChest().Find("harbour"));
        var theGallerys = Assert.Single(Register.Open(temp.Register.Folder, by: 2).ReadChest().Find("harbour"));

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

        var chest = _demo.ReadChest();

        Assert.NotEmpty(chest.Find(""));
        Assert.All(chest.Find("a"), line => Assert.NotNull(line.Title + line.Makers + line.Numberings));
        Assert.False(chest.Refresh());
    }

    [Fact]
    public void An_empty_register_has_an_empty_chest()
    {
        using TempRegister temp = new();

        var chest = temp.Register.ReadChest();

        Assert.Empty(chest.Find(""));
        Assert.Empty(chest.Find("a"));
    }
}
