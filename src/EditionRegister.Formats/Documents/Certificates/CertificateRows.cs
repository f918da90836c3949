using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using static EditionRegister.Formats.Documents.Certificates.CertificateSettings;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>One printed line of a row; a long value has several, the first of which carries the label.</summary>
internal sealed record RowLine(string? Label, string Words, double SpaceBefore);

/// <summary>Labels and values set at one size.</summary>
internal sealed class CertificateRows
{
    private readonly CertificateGrid _grid;
    private readonly Typesetter _type;
    private readonly Setting _value;

    public CertificateRows(IEnumerable<StatementLine> rows, double size, CertificateGrid grid, Typesetter type)
    {
        (_grid, _type, _value) = (grid, type, Value(size));
        Lines = [.. rows.SelectMany(Split)];
    }

    public IReadOnlyList<RowLine> Lines { get; }

    public double Height => Lines.Sum(HeightOf);

    public double HeightOf(RowLine line) => line.SpaceBefore + _value.Leading;

    /// <summary>Adds a line under <paramref name="y"/> and tells where the next one goes.</summary>
    public double Place(PageBuilder page, double y, RowLine line)
    {
        var baseline = y + HeightOf(line) - (_value.Leading * 0.27);

        if (line.Label is { } label)
        {
            page.Add(Caption.EndingAt(_grid.LabelRight, baseline, label, _type));
        }

        if (line.Words.Length > 0)
        {
            page.Add(_value.At(_grid.Axis, baseline, line.Words));
        }

        return y + HeightOf(line);
    }

    // A label may be longer than its column too: it then wraps beside its value.
    private IEnumerable<RowLine> Split(StatementLine row)
    {
        var values = _value.Wrap(row.Value, _grid.ValueWidth, _type);
        var labels = Caption.Wrap(row.Label, _grid.LabelWidth, _type);

        return Enumerable.Range(0, Math.Max(values.Count, labels.Count)).Select(i => new RowLine(
            labels.ElementAtOrDefault(i),
            values.ElementAtOrDefault(i) ?? "",
            i == 0 ? _value.Leading * 0.3 : 0));
    }
}
