using EditionRegister.Domain.Documents;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>Where things stand on a certificate: everything hangs on one axis, labels to its left and values to its right. Millimetres.</summary>
internal sealed record CertificateGrid(PageSize Page)
{
    /// <summary>Between a label and its value, with the axis in its middle.</summary>
    private const double Gutter = 6;

    public double Left { get; } = 24;

    public double Top { get; } = 24;

    public double Right => Page.Width - 24;

    public double Bottom => Page.Height - 16;

    public double Width => Right - Left;

    public double LabelRight => Left + 38;

    public double LabelWidth => LabelRight - Left;

    public double Axis => LabelRight + Gutter;

    public double ValueWidth => Right - Axis;
}
