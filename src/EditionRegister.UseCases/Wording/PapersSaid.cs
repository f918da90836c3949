using EditionRegister.Domain.Documents;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was issued and written, and what to mind about it, said alike by commands and rooms.</summary>
public static class PapersSaid
{
    public const string MindCertificates = "Local law decides what a certificate for a print must disclose; read it before you sign.";

    public const string MindLabels = "Print at 100 %, not fitted to the page. Labels go on folder, sleeve, mat or backing, never on the sheet: `edreg pencil` spells what is pencilled there.";

    /// <param name="serials">At least one.</param>
    public static string Issued(IReadOnlyList<string> serials) => $"{Counted.Of(serials.Count, "certificate")} issued: {string.Join(", ", serials)}.";

    public static string CertificatesWritten(int files) => $"{Counted.Of(files, "certificate")} written.";

    public static string LabelsWritten(LabelsWritten written) => $"{Counted.Of(written.Labels, "label")} on {Counted.Sheets(written.Sheets)}.";

    /// <param name="impressions">How many.</param>
    /// <param name="path">The file as a person is to read it.</param>
    public static string Listed(int impressions, string path) => $"{Counted.Of(impressions, "impression")} listed in {path}.";

    /// <summary>25 labels: 2 sheets of a4-3x8, from position 4; 20 places left on the last.</summary>
    public static string Planned(LabelsPlanned planned) =>
        $"{Counted.Of(planned.Labels.Count, "label")}: {Counted.Sheets(planned.Sheets)} of {planned.Sheet.Name}, from position {Counted.Figure(planned.FirstPosition)}; "
        + $"{(planned.Left == 0 ? "no place" : Counted.Of(planned.Left, "place"))} left on {(planned.Sheets == 1 ? "it" : "the last")}.";

    /// <summary>3 across and 8 down, 70 × 37 mm, on A4.</summary>
    public static string Geometry(LabelSheet sheet) =>
        FormattableString.Invariant($"{sheet.Columns} across and {sheet.Rows} down, {sheet.LabelWidth:0.##} × {sheet.LabelHeight:0.##} mm, on {Paper(sheet)}");

    private static string Paper(LabelSheet sheet) =>
        PageSize.All.FirstOrDefault(page => Math.Abs(page.Width - sheet.PaperWidth) < 1 && Math.Abs(page.Height - sheet.PaperHeight) < 1)?.Word
        ?? FormattableString.Invariant($"{sheet.PaperWidth:0.##} × {sheet.PaperHeight:0.##} mm");
}
