namespace EditionRegister.Cli.Tests;

/// <summary>Figures of the stories, each beside its working by hand: what the program is approved to say is what a pencil comes to.</summary>
public sealed class StoryFiguresTests
{
    [Theory]

    // Passes. 16 started, 1 unused: 15 go in; 1 is misregistered: 14. Of these 1 is held out: 13. Four of the 13 are coloured by hand and 1 is smudged: 13 - 1 = 12.
    [InlineData("passes", "15 in, 14 out, 1 misregistration. 14 sheets at hand.")]
    [InlineData("passes", "14 in, 13 out, 1 held out (progressive proof). 13 sheets at hand.")]
    [InlineData("passes", "4 in, 3 out, 1 smudge. 12 sheets at hand.")]

    // 1 unused + 1 misregistered + 1 smudged + the pile = 16, so the pile is 13: the 12 and the one held out.
    [InlineData("passes", "16 started = 1 unused + 2 spoiled + 13 in the pile, 1 of them held out.")]

    // 9 - 1 = 8 sheets, two to a diptych: 8 / 2 = 4. 5 - 1 = 4 sheets, each cut in two: 4 x 2 = 8; with none spoiled it would be 5 x 2 = 10.
    [InlineData("passes", "9 started = 0 unused + 1 spoiled + 8 made up, 2 to an impression: 4 in the pile.")]
    [InlineData("passes", "5 started = 0 unused + 1 spoiled + 4 cut into 2 each: 8 in the pile.")]
    [InlineData("passes", "which, cut into 2 each, give 10, but 8 are in the pile.")]

    // 0.97 to the fourth is 0.885293. Of 26 sheets at least 20 are good with 0.976079, of 25 with 0.940801 (binomial; the same model and values as the Domain's test names).
    [InlineData("passes", "of the sheets started 88.53 % come through.")]
    [InlineData("passes", "   25      94.08 %\n   26      97.61 %")]

    // 560 / 280 = 2 and 760 / 380 = 2: 2 x 2 = 4 pieces, and 15 / 4 is 3.75: 4 sheets. Turned, 760 / 280 = 2 and 560 / 380 = 1: 2 pieces, and 15 / 2 is 7.5: 8 sheets.
    [InlineData("passes", "Out of one full sheet come 4 pieces (2 rows of 2): 4 full sheets for 15.")]
    [InlineData("passes", "Out of one full sheet come 2 pieces (1 row of 2, turned across the sheet): 8 full sheets for 15.")]

    // Editions. 1-10 and deluxe I-II: 10 + 2 = 12 in the size; 2 lettered and 1 bis beside it: 12 + 2 + 1 = 15 in all. Given: 3 of the ten and deluxe I: 4, so 12 - 4 = 8 are open.
    [InlineData("editions", "edition size          12\nlettered copies       2\nbis copies            1\ntotal of impressions  15")]
    [InlineData("editions", "accounted for         4 of 12 (8 open)")]

    // Sets. Two parts in two copies are four sheets: two are gathered by number and two one by one, 2 + 1 + 1 = 4.
    [InlineData("sets", "2 of 2 copies gathered")]

    // Moves. The gallery's 37.5 % of 150.00 is 56.25: 150.00 - 56.25 = 93.75.
    [InlineData("moves", "150.00 EUR  93.75 EUR")]

    // Stock. Four should lie there and three of them were scanned: 4 - 3 = 1 missing. Six codes, one of them twice: 5 things, less the 3 that belong there: 1 stranger and 1 not ours.
    [InlineData("stock", "3 present, 1 missing, 1 stranger, 1 not ours.")]

    // Condition. It came back with three remarks, and one of them went out with it: 3 - 1 = 2 are new.
    [InlineData("condition", "had not gone out with (2026-03-01): handling crease (upper left) and dented corner (lower right).")]

    // Four scenes. A varied edition: 7 - 1 = 6, numbered 1/6 to 6/6. The restrike: 12 - 1 = 11 = 10 numbered + 1 spare, after 50 of the first edition.
    [InlineData("four-scenes", "7 started = 0 unused + 1 spoiled + 6 in the pile.")]
    [InlineData("four-scenes", "12 started = 0 unused + 1 spoiled + 11 in the pile.")]
    [InlineData("four-scenes", "edition size          10\ntotal of impressions  10\nspare sheets          1\naccounted for         10 of 10\nrank                  posthumous edition; before it edition 1, 50 impressions")]

    // A portfolio of four parts in three copies: 4 x 3 = 12 sheets. One sheet is lent and insured for 200: 200 in all. It came back with three remarks, one known: two are new.
    [InlineData("four-scenes", "12 sheets gathered into the copies of “Four of the Shore”.")]
    [InlineData("four-scenes", "1 sheet: 200.00 EUR for 1 sheet.")]
    [InlineData("four-scenes", "New since it went out (report 1, 2026-02-20): handling crease, upper left: 40 mm; dented corner, lower right: 3 mm.")]
    public void What_is_said_is_what_a_pencil_comes_to(string story, string figure)
    {
        var told = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Story", "Apart", $"{story}.txt")).ReplaceLineEndings("\n");

        Assert.Contains(figure, told, StringComparison.Ordinal);
    }
}
