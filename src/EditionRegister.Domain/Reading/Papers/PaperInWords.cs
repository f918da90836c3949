using System.Globalization;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>A paper in one line: to be read again, or for a person.</summary>
internal static class PaperInWords
{
    private const long Inch = 25_400;

    public static string Write(ReadPaper paper)
    {
        string?[] parts =
        [
            paper.Name,
            paper.Maker is null ? null : $"made by {paper.Maker}",
            paper.Weight?.GramsWritten is { } grams ? $"{Hundredths(grams)} g/m²" : null,
            paper.Weight?.Pounds is { } pounds ? Pounds(paper.Weight, pounds, "x") : null,
            .. paper.Edges.Select(edge => edge.ToString()),
            paper.SheetName ?? (paper.Sheet is { } sheet ? $"sheet {sheet.Height.Millimetres} x {sheet.Width.Millimetres} mm" : null),
            paper.Lot is null ? null : $"lot {paper.Lot}",
            .. paper.Left,
        ];

        return string.Join(", ", parts.OfType<string>());
    }

    public static string Explain(ReadPaper paper)
    {
        string?[] parts =
        [
            paper.Name is null ? null : SafeText.Show(paper.Name),
            paper.Maker is null ? null : $"made by {SafeText.Show(paper.Maker)}",
            paper.Weight?.GramsWritten is { } grams ? $"{Hundredths(grams)} g/m²" : null,
            paper.Weight is { Pounds: { } pounds } weight ? Pounds(weight, pounds, "×") + WorkedOut(weight) : null,
            .. paper.Edges.Select(edge => edge.ToString()),
            Sheet(paper),
            paper.Lot is null ? null : $"lot {SafeText.Show(paper.Lot)}",
            paper.Left.Count == 0 ? null : $"left as written: {string.Join("; ", paper.Left.Select(SafeText.Show))}",
        ];

        return string.Join(". ", new[] { string.Join(", ", parts.OfType<string>()) }.Where(line => line.Length > 0).Concat(paper.Notes.Select(note => note.TrimEnd('.'))));
    }

    private static string Pounds(PaperWeight weight, int pounds, string times) =>
        $"{Hundredths(pounds)} lb{(weight.BasisWord is { } word ? $" {word}" : weight.Basis is { } basis ? $" ({Basis(basis, times)})" : "")}";

    private static string WorkedOut(PaperWeight weight) =>
        weight.IsWorkedOut ? $": {(weight.Grams!.Value / 100m).ToString("0.#", CultureInfo.InvariantCulture)} g/m²"
        : weight.WhyNoGrams is { } why ? $": grams not known, since {why}"
        : "";

    private static string? Sheet(ReadPaper paper) => paper switch
    {
        { SheetName: { } name, Sheet: { } sheet } => $"{name}, {sheet}",
        { Sheet: { } sheet } => $"sheet {sheet}",
        _ => null,
    };

    // In inches where they were inches of a ruler, so that what is read again is the same to the micrometre.
    private static string Basis(Size basis, string times) =>
        InchesOf(basis.Height) is { } high && InchesOf(basis.Width) is { } wide ? $"{high} {times} {wide} in" : $"{basis.Height.Millimetres} {times} {basis.Width.Millimetres} mm";

    private static string? InchesOf(Length length)
    {
        var sixteenths = ((32 * length.Micrometres) + Inch) / (2 * Inch);

        return sixteenths > 0 && ((2 * sixteenths * Inch) + 16) / 32 == length.Micrometres ? length.Figures("in") : null;
    }

    private static string Hundredths(int value) => (value / 100m).ToString("0.##", CultureInfo.InvariantCulture);
}
