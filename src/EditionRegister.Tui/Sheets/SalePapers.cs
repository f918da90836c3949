using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.Sheets;

/// <summary>The certificate and the labels that go with sheets just sold. What is refused of them leaves the sale as it stands.</summary>
internal static class SalePapers
{
    public const string FirstLabel = "First label";
    private const string Certificate = "Certificate";
    private const string Labels = "Label";
    private const string LabelSheet = "Label sheet";
    private const string UsualSheet = "a4-3x8";

    /// <param name="labelSheets">Names of the label sheets there are.</param>
    public static IReadOnlyList<Field> Fields(IReadOnlyList<string> labelSheets) =>
    [
        Field.YesNo(Certificate, false),
        Field.YesNo(Labels, false),
        new Field(LabelSheet, UsualSheet)
        {
            IsNeeded = true,
            Form = "the label sheet by name, such as a4-3x8 or letter-3x10",
            Known = typed => Asking.Fields.Matching(labelSheets, typed),
        },
        new Field(FirstLabel, "1") { IsNeeded = true, Form = "the first label still on the sheet, counted row by row", Wrong = typed => Asking.Fields.Count(FirstLabel, least: 1).Wrong(typed) },
    ];

    /// <summary>What label sheets there are; none where one of their files is wrong, which is said when labels are printed.</summary>
    public static Task<IReadOnlyList<string>> LabelSheetsAsync(Desk desk) => desk.Store.Do(register =>
    {
        try
        {
            return (IReadOnlyList<string>)[.. register.ListLabelSheets.Run().Select(sheet => sheet.Name)];
        }
        catch (RefusedException)
        {
            return [];
        }
    });

    /// <summary>Answers in sentences what was written and where, or why not.</summary>
    public static async Task<IReadOnlyList<string>> WriteAsync(Desk desk, SheetsAtHand sheets, Form form)
    {
        List<string> said = [];

        if (form.IsYes(Certificate))
        {
            said.Add(await SaidAsync(desk, register => Certificates(register, sheets)));
        }

        if (form.IsYes(Labels))
        {
            var (sheet, first) = (form[LabelSheet]!, Asking.Fields.Whole(form[FirstLabel]) ?? 1);
            said.Add(await SaidAsync(desk, register => LabelsOf(register, sheets, sheet, first)));
        }

        return said;
    }

    private static async Task<string> SaidAsync(Desk desk, Func<Register, (string Sentence, IReadOnlyList<string> Files)> write)
    {
        try
        {
            var (sentence, files) = await desk.Store.Do(write);
            desk.Written.Add(files);

            return sentence;
        }
        catch (RefusedException refusal)
        {
            return $"The sale stands. {refusal.Message}";
        }
    }

    private static (string, IReadOnlyList<string>) Certificates(Register register, SheetsAtHand sheets)
    {
        // A certificate that stands already goes with the sheet as it is.
        var without = register.LookAround.Chosen(sheets.ByCode).SelectMany(chosen => chosen.Sheets).Where(sheet => sheet.ValidCertificate is null).Select(sheet => sheet.ShownCode).ToList();
        var issued = without.Count == 0 ? [] : register.IssueCertificates.Run(new() { Sheets = string.Join(", ", without) });
        var files = register.WriteCertificates.Run(sheets.ByCode);
        var stood = sheets.Count - issued.Count;
        var said = issued.Count == 0 ? "" : $"{PapersSaid.Issued(issued)} ";
        var before = stood == 0 ? "" : $"{Counted.Of(stood, "certificate")} stood already. ";

        return ($"{said}{before}{Where(register, files)}", files);
    }

    private static (string, IReadOnlyList<string>) LabelsOf(Register register, SheetsAtHand sheets, string sheet, int first)
    {
        // Each sale has a file of its own, so that the labels of the one before are not lost unprinted.
        var path = Path.Combine(register.Folder.Exports, $"labels-{sheets.First.Sheet.ShownCode}.pdf");
        var written = register.WriteLabels.Run(sheets.ByCode, sheet, first, path);

        return ($"{PapersSaid.LabelsWritten(written)} {Where(register, [written.Path])}", [written.Path]);
    }

    private static string Where(Register register, IReadOnlyList<string> files) => $"Written to {register.Folder.Exports}: {string.Join(", ", files.Select(Path.GetFileName))}.";
}
