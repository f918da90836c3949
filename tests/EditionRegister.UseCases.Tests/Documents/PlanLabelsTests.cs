using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Tests.Documents;

public sealed class PlanLabelsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public PlanLabelsTests() => _register = SmallEdition.Make(_temp.Register);

    public void Dispose() => _temp.Dispose();

    // Counted by hand on a sheet of 24.
    [Theory]
    [InlineData(25, 4, 2, 20, 5, "25 labels: 2 sheets of a4-3x8, from position 4; 20 places left on the last.")]
    [InlineData(24, 1, 1, 0, 1, "24 labels: 1 sheet of a4-3x8, from position 1; no place left on it.")]
    [InlineData(1, 24, 1, 0, 1, "1 label: 1 sheet of a4-3x8, from position 24; no place left on it.")]
    [InlineData(2, 24, 2, 23, 2, "2 labels: 2 sheets of a4-3x8, from position 24; 23 places left on the last.")]
    [InlineData(1, 23, 1, 1, 24, "1 label: 1 sheet of a4-3x8, from position 23; 1 place left on it.")]
    [InlineData(48, 1, 2, 0, 1, "48 labels: 2 sheets of a4-3x8, from position 1; no place left on the last.")]
    public void Counts_sheets_and_what_is_left_on_the_last(int labels, int from, int sheets, int left, int next, string said)
    {
        var sheet = _register.ListLabelSheets.Run().Single(one => one.Name == "a4-3x8");

        LabelsPlanned planned = new(sheet, [.. Enumerable.Repeat(new Label([], "7KQ4-M2X3", null), labels)], from);

        Assert.Equal((sheets, left, next, said), (planned.Sheets, planned.Left, planned.NextPosition, PapersSaid.Planned(planned)));
    }

    [Fact]
    public void Says_what_each_label_says_in_the_order_chosen()
    {
        var planned = _register.PlanLabels.Run(SmallEdition.Numbers("3, 1"), "a4-3x8", 2);

        Assert.Equal(["3/4 Harbour", "1/4 Harbour"], planned.Labels.Select(label => label.Lines[0]));
        Assert.Equal([_register.Sheet(3).ShownCode, _register.Sheet(1).ShownCode], planned.Labels.Select(label => label.Code));
    }

    [Theory]
    [InlineData("a4-3x8", 25, "label-position")]
    [InlineData("a4-9x9", 1, "label-sheet-unknown")]
    public void Refuses_what_writing_would_refuse(string sheet, int from, string name)
    {
        var planned = Assert.Throws<RefusedException>(() => _register.PlanLabels.Run(SmallEdition.Numbers("1"), sheet, from));

        var written = Assert.Throws<RefusedException>(() => _register.WriteLabels.Run(SmallEdition.Numbers("1"), sheet, from));
        Assert.Equal((name, name, written.Message), (planned.Name, written.Name, planned.Message));
    }

    [Fact]
    public void A_label_sheet_of_the_registers_own_stands_beside_the_shipped_ones()
    {
        var own = Directory.CreateDirectory(Path.Combine(_register.Folder.Templates, "label-sheets")).FullName;
        File.WriteAllText(Path.Combine(own, "small.toml"), """
            paper_width_mm = 100
            paper_height_mm = 100
            columns = 2
            rows = 2
            left_mm = 0
            top_mm = 0
            label_width_mm = 50
            label_height_mm = 50
            pitch_x_mm = 50
            pitch_y_mm = 50
            """);

        Assert.Equal(["a4-2x7", "a4-3x8", "a4-4x10", "letter-3x10", "small"], _register.ListLabelSheets.Run().Select(sheet => sheet.Name));
    }
}
