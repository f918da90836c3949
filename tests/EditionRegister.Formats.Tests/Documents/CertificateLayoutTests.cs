using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Certificates;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Tests.Documents;

public sealed class CertificateLayoutTests : IDisposable
{
    private const string VeryLong = "All that was seen from the loft on the harbour at low tide in the first week of March: two boats, a heron, nets, "
        + "the tide table nailed to the door, a dog asleep in a coil of rope, and, a long way out, a light that nobody could account for afterwards, "
        + "though several of those who had seen it were asked, each by themselves, and all of them said that it had been there";

    private readonly Typesetter _type = new();

    [Theory]
    [InlineData("A4", "Harbour, low tide", "3/12", 0)]
    [InlineData("A4", "Harbour, low tide", "3/12", 12)]
    [InlineData("A4", "Harbour, low tide", "3/12", 40)]
    [InlineData("Letter", "The Whole of the Harbour as Seen from the Loft at Low Tide, with Two Boats, a Heron and the Nets", "A/P XXXVIII/XL", 3)]
    [InlineData("Letter", "Hafen", "B.A.T.", 40)]
    [InlineData("A4", VeryLong, "3/12", 0)]
    [InlineData("A4", "Harbour", VeryLong, 2)]
    public void No_words_stand_on_others(string page, string title, string number, int more)
    {
        foreach (var layout in Pages(page, title, number, more))
        {
            var boxes = layout.Texts.Select(text => (text.Words, Box: BoxOf(text))).ToList();

            Assert.All(boxes, one => Assert.Single(boxes, other => Overlap(one.Box, other.Box)));
        }
    }

    [Fact]
    public void Values_shrink_to_the_floor_and_then_go_on_overleaf()
    {
        var airy = Pages("A4", "Harbour", "3/12", 0);
        var full = Pages("A4", "Harbour", "3/12", 12);
        var overleaf = Pages("A4", "Harbour", "3/12", 40);

        Assert.Equal([1, 1, 2], [airy.Count, full.Count, overleaf.Count]);
        Assert.Equal(11, SizeOf(airy, "15 impressions"));
        Assert.InRange(SizeOf(full, "15 impressions"), 8.5, 10.75);
        Assert.Equal(8.5, SizeOf(overleaf, "15 impressions"));
    }

    [Fact]
    public void The_edge_of_the_code_stands_on_the_right_margin_and_its_modules_can_be_read()
    {
        var mark = Assert.Single(Pages("A4", "Harbour", "3/12", 0)[0].QrMarks);
        var module = mark.Box.Width / mark.Matrix.ModulesWithQuiet;

        Assert.Equal(210 - 24, mark.Box.X + mark.Box.Width - (4 * module), tolerance: 0.001);
        Assert.True(module >= 0.33);
        Assert.Equal(mark.Box.Width, mark.Box.Height);
    }

    [Fact]
    public void There_is_room_to_sign_by_hand()
    {
        var page = Pages("A4", "Harbour", "3/12", 0)[0];
        var signing = page.Hairlines.Where(line => line.Ink == Ink.Black).ToList();
        var above = page.Texts.Select(text => text.Baseline)
            .Concat(page.QrMarks.Select(mark => mark.Box.Y + mark.Box.Height))
            .Where(y => y < signing[0].Y).Max();

        Assert.Equal(2, signing.Count);
        Assert.All(signing, line => Assert.True(line.Width >= 40 && line.Y - above >= 12));
    }

    public void Dispose() => _type.Dispose();

    private IReadOnlyList<PageLayout> Pages(string page, string title, string number, int more)
    {
        var certificate = Demo.With(
        [
            Demo.Line("title", title),
            Demo.Line("number", number),
            .. Enumerable.Range(1, more).Select(i => new StatementLine($"note-{i}", $"Further statement {i}", $"Said of the sheet in a line of its own, {i}")),
        ]);

        return new CertificateLayout(certificate with { Page = PageSize.Of(page)! }, Demo.Head, _type).Pages();
    }

    private static double SizeOf(IEnumerable<PageLayout> pages, string words) =>
        pages.SelectMany(page => page.Texts).Single(text => text.Words == words).Size;

    // From a little under capital height to a little under the baseline: lines set solid do not count as touching.
    private Box BoxOf(TextPiece text)
    {
        var size = text.Size * 25.4 / 72;
        return new(text.X, text.Baseline - (0.7 * size), _type.Width(text.Words, text.Face, text.Size, text.Tracking), 0.9 * size);
    }

    private static bool Overlap(Box one, Box other) =>
        one.X < other.X + other.Width && other.X < one.X + one.Width && one.Y < other.Y + other.Height && other.Y < one.Y + one.Height;
}
