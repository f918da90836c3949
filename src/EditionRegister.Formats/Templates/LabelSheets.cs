using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Toml;

namespace EditionRegister.Formats.Templates;

/// <summary>The label sheets a person can choose from: the shipped ones and those of the register's own <c>label-sheets/</c>.</summary>
public static class LabelSheets
{
    private const string Folder = "label-sheets";
    private const long MostAcrossOrDown = 100;

    private static readonly string[] Keys =
    [
        "paper_width_mm", "paper_height_mm", "columns", "rows", "left_mm", "top_mm",
        "label_width_mm", "label_height_mm", "pitch_x_mm", "pitch_y_mm",
    ];

    /// <exception cref="RefusedException">One of the files is wrong; told with its name.</exception>
    public static IReadOnlyList<LabelSheet> All(string? overrideFolder) =>
        [.. NamesIn(overrideFolder).Select(name => Load(name, overrideFolder))];

    /// <exception cref="RefusedException">There is no such sheet, or its file is wrong.</exception>
    public static LabelSheet Named(string name, string? overrideFolder)
    {
        var names = NamesIn(overrideFolder);

        return names.Contains(name)
            ? Load(name, overrideFolder)
            : throw new RefusedException(
                "label-sheet-unknown",
                $"No labels were written: there is no label sheet “{name}”. Choose one of these: {string.Join(", ", names)}.");
    }

    private static List<string> NamesIn(string? overrideFolder) =>
        [.. Templates.Names(Folder, overrideFolder).Select(file => Path.GetFileNameWithoutExtension(file))];

    private static LabelSheet Load(string name, string? overrideFolder)
    {
        var (text, fileName) = Templates.Read($"{Folder}/{name}.toml", overrideFolder);
        var toml = TomlText.Parse(text, fileName, Keys);

        LabelSheet sheet = new()
        {
            Name = name,
            PaperWidth = Length(toml, "paper_width_mm"),
            PaperHeight = Length(toml, "paper_height_mm"),
            Columns = Count(toml, "columns"),
            Rows = Count(toml, "rows"),
            Left = Margin(toml, "left_mm"),
            Top = Margin(toml, "top_mm"),
            LabelWidth = Length(toml, "label_width_mm"),
            LabelHeight = Length(toml, "label_height_mm"),
            PitchX = Length(toml, "pitch_x_mm"),
            PitchY = Length(toml, "pitch_y_mm"),
        };

        return LabelSheetGeometry.Fault(sheet) is { } fault ? throw new TomlRefusals(fileName).Geometry(fault) : sheet;
    }

    private static double Length(TomlText toml, string key) =>
        (toml.Number(key) ?? throw toml.Missing(key)) is > 0 and < 2000 and var length
            ? length
            : throw toml.Wrong(key, "must be a length above 0 in millimetres");

    private static double Margin(TomlText toml, string key) =>
        (toml.Number(key) ?? throw toml.Missing(key)) is >= 0 and var margin
            ? margin
            : throw toml.Wrong(key, "must be 0 or more millimetres");

    private static int Count(TomlText toml, string key) =>
        (toml.Whole(key) ?? throw toml.Missing(key)) is >= 1 and <= MostAcrossOrDown and var count
            ? (int)count
            : throw toml.Wrong(key, "must be a whole number from 1 to 100");
}
