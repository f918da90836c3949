using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Drawing;
using EditionRegister.Formats.Documents.Layout;
using static EditionRegister.Formats.Documents.Certificates.CertificateSettings;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>One printed line of a row; a long value has several, the first of which carries the label.</summary>
/// <param name="Rest">How many lines of the same row follow.</param>
internal sealed record RowLine(string? Label, string Words, double SpaceBefore, int Rest);

/// <summary>Labels and values set at one size.</summary>
internal sealed class CertificateRows
{
    private readonly CertificateGrid _grid;
    private readonly Typesetter _type;
    private readonly Setting _value;
    private readonly double _air;

    /// <param name="air">Space before each row, in lines.</param>
    public CertificateRows(IEnumerable<StatementLine> rows, double size, double air, CertificateGrid grid, Typesetter type)
    {
        (_grid, _type, _value, _air) = (grid, type, Value(size), air);
        Lines = [.. rows.SelectMany(Split)];
    }

    public IReadOnlyList<RowLine> Lines { get; }

    public double Height => Lines.Sum(HeightOf);

    public double HeightOf(RowLine line) => line.SpaceBefore + _value.Leading;

    /// <summary>Of the line and what must stay on its page: a short row is not parted, of a long one two lines stay together.</summary>
    public double HeightTogether(RowLine line) =>
        HeightOf(line) + (line.SpaceBefore == 0 ? 0 : (line.Rest < 5 ? line.Rest : 1) * _value.Leading);

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

        var count = Math.Max(values.Count, labels.Count);

        return Enumerable.Range(0, count).Select(i => new RowLine(
            labels.ElementAtOrDefault(i),
            values.ElementAtOrDefault(i) ?? "",
            i == 0 ? _value.Leading * _air : 0,
            count - i - 1));
    }
}
