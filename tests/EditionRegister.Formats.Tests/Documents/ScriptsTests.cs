using System.Text;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Tests.Documents;

public sealed class ScriptsTests
{
    // Rules L1, L2, N1 and W4 of UAX #9, worked by hand; no published vectors for lines of this shape are kept here.
    [Theory]
    [InlineData("Harbour 3/12", "Harbour 3/12")]
    [InlineData("שלום", "<שלום")]
    [InlineData("צילום 12/50 שני", "< שני|12/50|<צילום ")]
    [InlineData("abc שלום עולם def", "abc |<שלום עולם| def")]
    [InlineData("נמל: Harbour", "Harbour|<נמל: ")]
    public void Runs_stand_on_paper_from_the_left(string text, string runs)
    {
        using FontShelf shelf = new();

        var split = Itemiser.Split(text, Face.Serif, shelf);

        // Neighbours in two fonts but one direction count as one run here: which fonts there are differs by machine.
        List<(bool Right, string Text)> merged = [];

        foreach (var run in split)
        {
            if (merged.Count > 0 && merged[^1].Right == run.RightToLeft)
            {
                merged[^1] = (run.RightToLeft, run.RightToLeft ? run.Text + merged[^1].Text : merged[^1].Text + run.Text);
            }
            else
            {
                merged.Add((run.RightToLeft, run.Text));
            }
        }

        Assert.Equal(runs, string.Join('|', merged.Select(run => (run.Right ? "<" : "") + run.Text)));
    }

    [Theory]
    [InlineData("版画・港の朝")]
    [InlineData("שרה לוי")]
    [InlineData("नदी")]
    [InlineData("ffi office Å")]
    public void The_text_layer_says_what_was_written_in_any_script(string title)
    {
        using TempFolder folder = new();
        var file = Path.Combine(folder.Path, "certificate.pdf");
        File.WriteAllBytes(file, Demo.Pdf(Demo.With(Demo.Line("title", title))));

        var text = Encoding.UTF8.GetString(Tool.Run("pdftotext", "-layout", file, "-"));

        // pdftotext puts marks of direction round what reads from the right.
        Assert.Contains(title.Normalize(), text.Normalize().Replace("\u202B", "").Replace("\u202C", ""), StringComparison.Ordinal);
    }

    [Fact]
    public void A_character_that_no_font_has_is_a_visible_mark()
    {
        using FontShelf shelf = new();
        using Typesetter type = new();

        var shaped = type.Shape("\U0010FFFD", Face.Serif, 0);

        Assert.Same(shelf.Of(Face.Serif), shelf.For("\U0010FFFD", Face.Serif));
        Assert.Equal(shaped.Runs[0].Glyphs, type.Shape("\uFFFD", Face.Serif, 0).Runs[0].Glyphs);
        Assert.True(shaped.Width > 0.3);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("\t\r\n\u2028")]
    [InlineData("\u200D\uFE0F\u0301")]
    [InlineData("a\uD83Db")]
    [InlineData("\u202Eabc\u202C")]
    [InlineData("👩‍👩‍👧 🏳️‍🌈")]
    public void Odd_text_is_drawn_without_a_crash(string value)
    {
        var pdf = Demo.Pdf(Demo.With(Demo.Line("title", value), Demo.Line("maker", value), Demo.Line("paper", value), Demo.Line("number", value)));

        Assert.Contains("7KQ4-M2X3", PdfReading.Texts(pdf)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_licence_of_the_fonts_is_shipped_with_them()
    {
        using var stream = typeof(Typesetter).Assembly.GetManifestResourceStream("fonts/OFL.txt");

        Assert.NotNull(stream);
        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", new StreamReader(stream).ReadToEnd(), StringComparison.Ordinal);
    }
}
