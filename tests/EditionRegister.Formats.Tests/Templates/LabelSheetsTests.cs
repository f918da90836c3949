using EditionRegister.Domain;
using EditionRegister.Formats.Templates;

namespace EditionRegister.Formats.Tests.Templates;

public sealed class LabelSheetsTests : IDisposable
{
    private const string Own = """
        paper_width_mm = 100
        paper_height_mm = 50
        columns = 2
        rows = 1
        left_mm = 0
        top_mm = 0
        label_width_mm = 50
        label_height_mm = 50
        pitch_x_mm = 50
        pitch_y_mm = 50
        """;

    private readonly TempFolder _own = new();

    [Fact]
    public void Four_sheets_are_shipped()
    {
        var sheets = LabelSheets.All(overrideFolder: null);

        Assert.Equal(["a4-2x7", "a4-3x8", "a4-4x10", "letter-3x10"], sheets.Select(sheet => sheet.Name));
        Assert.Equal([14, 24, 40, 30], sheets.Select(sheet => sheet.PerSheet));
    }

    // A4 is 210 × 297 mm by ISO 216; Letter is 8.5 × 11 in of 25.4 mm.
    [Theory]
    [InlineData("a4-2x7", 210, 297)]
    [InlineData("a4-3x8", 210, 297)]
    [InlineData("a4-4x10", 210, 297)]
    [InlineData("letter-3x10", 8.5 * 25.4, 11 * 25.4)]
    public void Every_label_lies_on_the_paper_and_the_margins_left_and_right_are_alike(string name, double width, double height)
    {
        var sheet = LabelSheets.Named(name, overrideFolder: null);

        var boxes = sheet.Place(sheet.PerSheet).Select(place => place.Box).ToList();

        Assert.Equal(width, sheet.PaperWidth, tolerance: 1e-9);
        Assert.Equal(height, sheet.PaperHeight, tolerance: 1e-9);
        Assert.Equal(boxes.Min(box => box.X), width - boxes.Max(box => box.X + box.Width), tolerance: 0.1);
        Assert.Equal(boxes.Min(box => box.Y), height - boxes.Max(box => box.Y + box.Height), tolerance: 0.5);
        Assert.True(boxes.Min(box => box.X) >= 0 && boxes.Min(box => box.Y) >= 0);
    }

    [Fact]
    public void The_users_own_sheets_stand_beside_the_shipped_ones()
    {
        _own.Write("label-sheets/card.toml", Own);

        Assert.Equal(["a4-2x7", "a4-3x8", "a4-4x10", "card", "letter-3x10"], LabelSheets.All(_own.Path).Select(sheet => sheet.Name));
        Assert.Equal(2, LabelSheets.Named("card", _own.Path).PerSheet);
    }

    [Fact]
    public void An_unknown_sheet_is_refused_with_the_names_there_are()
    {
        var refused = Assert.Throws<RefusedException>(() => LabelSheets.Named("a5", null));

        Assert.Equal("label-sheet-unknown", refused.Name);
        Assert.Equal("No labels were written: there is no label sheet “a5”. Choose one of these: a4-2x7, a4-3x8, a4-4x10, letter-3x10.", refused.Message);
    }

    [Theory]
    [InlineData("left_mm = 0", "left_mm = 2", "label-sheet-geometry", "the labels reach 102 mm across and the paper ends at 100 mm. Measure the sheet again and mend the file.")]
    [InlineData("top_mm = 0", "top_mm = 0.5", "label-sheet-geometry", "the labels reach 50.5 mm down and the paper ends at 50 mm. Measure the sheet again and mend the file.")]
    [InlineData("pitch_x_mm = 50", "pitch_x_mm = 40", "label-sheet-geometry", "labels 50 mm wide overlap at a pitch of 40 mm. Measure the sheet again and mend the file.")]
    [InlineData("columns = 2", "columns = 0", "toml-wrong-value", "line 3, column 11 says columns = 0; it must be a whole number from 1 to 100.")]
    [InlineData("top_mm = 0", "top_mm = -1", "toml-wrong-value", "line 6, column 10 says top_mm = -1; it must be 0 or more millimetres.")]
    [InlineData("label_width_mm = 50", "label_width_mm = 0", "toml-wrong-value", "line 7, column 18 says label_width_mm = 0; it must be a length above 0 in millimetres.")]
    [InlineData("rows = 1\n", "", "toml-missing-key", "rows is missing (line 1 is where it is looked for). Add it.")]
    public void Geometry_that_cannot_be_is_refused_with_its_file(string right, string wrong, string name, string message)
    {
        var path = _own.Write("label-sheets/card.toml", Own.ReplaceLineEndings("\n").Replace(right, wrong, StringComparison.Ordinal));

        var refused = Assert.Throws<RefusedException>(() => LabelSheets.Named("card", _own.Path));

        Assert.Equal(name, refused.Name);
        Assert.Equal($"{path} was not read: {message}", refused.Message);
    }

    public void Dispose() => _own.Dispose();
}
