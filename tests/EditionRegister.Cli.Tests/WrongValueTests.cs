using System.Text.Json;

namespace EditionRegister.Cli.Tests;

/// <summary>Values and options that are wrong usage: told with the right form, and nothing is recorded.</summary>
public sealed class WrongValueTests : IDisposable
{
    private const string Range = "no number, range of numbers or register code, so no impressions were chosen. Write it like 3-7, 9, A/P I-III, 7KQ4-M2X3; in a code, look for a mistyped character.";
    private const string Date = "takes a date such as 2026, 2026-03, 2026-03-01, c. 2026, spring 2026 or 2024 to 2026, and";
    private const string NotACode = "is no register code: a code has the form 7KQ4-M2X3, and its last character answers for the others. Nothing was changed. Look at the label again.";
    private const string Amount = "such as 180 or 180.50, with a point and without separators of thousands, and";
    private const string Numbering = "is no numbering. Nothing was changed. Write its first and last number, with the mark before them: 1-12, A/P I-II, H.C. A-C, B.A.T., or open.";

    private readonly CliRun _cli = new();

    public WrongValueTests()
    {
        _cli.Run("new", "studio");
        _cli.Set("EDREG_REGISTER", Path.Combine(_cli.Folder, "studio"));
    }

    public void Dispose() => _cli.Dispose();

    [Theory]
    [InlineData("work show three", "WORK takes a number, such as 3, and “three” is none.")]
    [InlineData("work show 0", "WORK takes a number, such as 3, and “0” is none.")]
    [InlineData("work show 99999999999999999999", "WORK takes a number, such as 3, and “99999999999999999999” is none.")]
    [InlineData("log ٣", "N takes a number, such as 3, and “٣” is none.")]
    [InlineData("list --edition x", "--edition takes the number of an edition, such as 3, and “x” is none.")]
    [InlineData("list --take 1.5", "--take takes a whole number, such as 12, and “1.5” is none.")]
    [InlineData("log --newest 0", "--newest takes a whole number from one, such as 12, and “0” is none.")]
    [InlineData("run add 1 --started -1", "--started takes a whole number, such as 12, and “-1” is none.")]
    [InlineData("run add 1 --pile 1,000", "--pile takes a whole number, such as 12, and “1,000” is none.")]
    [InlineData("run add 1 --printed 31.13.2026", "--printed " + Date + " “31.13.2026” is none. There is no such day.")]
    [InlineData("close 1 --on 2026-02-30", "--on " + Date + " “2026-02-30” is none. There is no such day.")]
    [InlineData("run add 1 --image big", "--image: “big” was not read. It gives no size. Write 310 x 220 (height x width in millimetres).")]
    [InlineData("sort keep --sheets 1", "STANDING takes kept, spare, left-out, held-out or pulled, and “keep” is none.")]
    [InlineData("matrix add 1 --what Block", "--what takes block, plate, stone, screen, stencil or other, and “Block” is none.")]
    [InlineData("matrix fate 1 burnt", "FATE takes undecided, cut-away-in-printing, cancelled, kept-uncancelled, regrained-or-reclaimed, cut-up, lost, given-away or unknown, and “burnt” is none.")]
    [InlineData("fate 1 12 burnt", "FATE takes open, never-printed, void, elsewhere or unknown, and “burnt” is none.")]
    [InlineData("price --sheets 7KQ4-M2X3 --asking 180,50", "--asking takes an amount in EUR " + Amount + " “180,50” is none.")]
    [InlineData("price --sheets 7KQ4-M2X3 --asking -1", "--asking takes an amount in EUR " + Amount + " “-1” is none.")]
    [InlineData("price --sheets 7KQ4-M2X3 --asking 180.50 --currency JPY", "--asking takes an amount in JPY " + Amount + " “180.50” is none.")]
    [InlineData("price --sheets 7KQ4-M2X3 --asking 180 --currency euro", "--currency takes a currency of ISO 4217 in three letters, such as EUR, and “euro” is none.")]
    [InlineData("sell --sheets 7KQ4-M2X3 --to 1 --net 1.000.000", "--net takes an amount in EUR " + Amount + " “1.000.000” is none.")]
    [InlineData("consign --sheets 7KQ4-M2X3 --to 1 --rate 33.333", "--rate takes a share in per cent from 0 to 100, such as 40 or 33.33, and “33.333” is none.")]
    [InlineData("consign --sheets 7KQ4-M2X3 --to 1 --rate 101", "--rate takes a share in per cent from 0 to 100, such as 40 or 33.33, and “101” is none.")]
    [InlineData("put-away --place x --sheets 3-x", "“3-x” is " + Range)]
    [InlineData("put-away --place x --sheets 7-3", "“7-3” ends before it begins, so no impressions were chosen. Write the lower number first.")]
    [InlineData("put-away --place x --sheets 7KQ4-M2X4", "“7KQ4-M2X4” is " + Range)]
    [InlineData("number 1 --as 1,,3 --sheets 7KQ4-M2X3", "“1,,3” has a comma with nothing beside it, so no impressions were chosen. Take the comma away or write what is missing.")]
    [InlineData("show 7KQ4-M2X4", "“7KQ4-M2X4” " + NotACode)]
    [InlineData("mend 1 7KQ4-M2X3", "“7KQ4-M2X3” " + Numbering)]
    [InlineData("new other --base-url prints", "--base-url takes a whole address such as https://example.org/prints, without ? and #, and “prints” is none.")]
    [InlineData("new other --page A3", "--page takes A4 or Letter, and “A3” is none.")]
    public void Says_which_form_is_right(string line, string sentence)
    {
        var code = _cli.Run(line.Split(' '));

        IsWrongUsage(code, sentence);
    }

    [Theory]
    [InlineData("work edit 1", "Nothing is said that would be put right: give --title, --year or --technique.")]
    [InlineData("work add --title Harbour --untitled --maker-unknown", "--title, --untitled and --title-unknown exclude each other.")]
    [InlineData("work add --title Harbour --maker 1 --maker-unknown", "--maker and --maker-unknown exclude each other.")]
    [InlineData("matrix add 1 --what block --reduction --not-reduction", "--reduction and --not-reduction exclude each other.")]
    [InlineData("sort kept --pile 1-14", "--pile and --work go together: places in a pile, and the work it is of.")]
    [InlineData("sort kept --work 1", "--pile and --work go together: places in a pile, and the work it is of.")]
    [InlineData("sort kept --run 2 --sheets 7KQ4-M2X3", "--run says whose pile is meant, so it needs --pile.")]
    [InlineData("number --sheets 7KQ4-M2X3", "To give numbers say of which edition: edreg number 3.")]
    [InlineData("number 1 --numbering 1-12 --as 3 --sheets 7KQ4-M2X3", "--numbering gives numbers as piled and --as gives them by hand: say one of them.")]
    [InlineData("number --take-back --as 3 --sheets 7KQ4-M2X3", "--take-back takes numbers back and gives none, so it goes without --numbering and --as.")]
    [InlineData("inscribe --sheets 7KQ4-M2X3 --side back", "--side, --manner and --position say where and how an inscription stands, so they need --inscription.")]
    [InlineData("price --sheets 7KQ4-M2X3", "Nothing is said of the sheets: give --asking or --for-sale.")]
    [InlineData("sell --sheets 7KQ4-M2X3", "Say who bought: --to, or --buyer-unknown where nobody knows; one of the two.")]
    [InlineData("sell --sheets 7KQ4-M2X3 --to 1 --buyer-unknown", "Say who bought: --to, or --buyer-unknown where nobody knows; one of the two.")]
    public void Says_which_options_do_not_go_together(string line, string sentence)
    {
        var code = _cli.Run(line.Split(' '));

        IsWrongUsage(code, sentence);
    }

    [Theory]
    [InlineData("work show", "Required argument 'WORK' missing for command: 'show'.")]
    [InlineData("show", "Required argument 'CODE' missing for command: 'show'.")]
    [InlineData("matrix fate 1", "Required argument 'FATE' missing for command: 'fate'.")]
    [InlineData("declare 1", "Option '--numbering' is required.")]
    [InlineData("put-away --sheets 1", "Option '--place' is required.")]
    [InlineData("list --take", "Required argument missing for option: '--take'.")]
    [InlineData("list --skip 1 --skip 2", "Option '--skip' expects a single argument but 2 were provided.")]
    [InlineData("work", "Required command was not provided.")]
    [InlineData("work ad", "edreg work does not know “ad”. Did you mean “add”?")]
    [InlineData("sell --buyer Ines", "edreg sell does not know “--buyer”.")]
    public void Says_what_is_missing_or_too_much(string line, string sentence)
    {
        var code = _cli.Run(line.Split(' '));

        IsWrongUsage(code, sentence);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\0")]
    [InlineData("half")]
    public void Takes_no_text_that_says_nothing_or_cannot_be_kept(string text)
    {
        // Half a surrogate pair would not survive the way from xunit to here.
        var title = text == "half" ? "Harbour \ud83d" : text;

        var code = _cli.Run("work", "add", "--maker-unknown", "--title", title);

        Assert.Equal(2, code);
        Assert.StartsWith("--title takes a text, and “", _cli.Error.ToString(), StringComparison.Ordinal);
    }

    private void IsWrongUsage(int code, string sentence)
    {
        var (said, printed) = (_cli.Error.ToString(), _cli.Output.ToString());
        _cli.Run("log", "--json");
        using var log = JsonDocument.Parse(_cli.Output.ToString());

        Assert.Equal(sentence, said.Split('\n')[0]);
        Assert.Contains("\n\nUsage: edreg ", said, StringComparison.Ordinal);
        Assert.Equal(2, code);
        Assert.Equal("", printed);
        Assert.Equal(1, log.RootElement.GetProperty("all").GetInt64());
    }
}
