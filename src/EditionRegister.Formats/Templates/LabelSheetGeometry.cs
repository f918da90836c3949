using System.Globalization;
using EditionRegister.Domain.Documents;

namespace EditionRegister.Formats.Templates;

/// <summary>Whether the labels of a sheet lie on the paper and beside each other.</summary>
internal static class LabelSheetGeometry
{
    // Packets give tenths of a millimetre, so that sums may run over by rounding.
    private const double Rounding = 0.05;

    public static string? Fault(LabelSheet sheet)
    {
        var right = sheet.Left + ((sheet.Columns - 1) * sheet.PitchX) + sheet.LabelWidth;
        var bottom = sheet.Top + ((sheet.Rows - 1) * sheet.PitchY) + sheet.LabelHeight;

        return right > sheet.PaperWidth + Rounding ? $"the labels reach {Mm(right)} across and the paper ends at {Mm(sheet.PaperWidth)}"
            : bottom > sheet.PaperHeight + Rounding ? $"the labels reach {Mm(bottom)} down and the paper ends at {Mm(sheet.PaperHeight)}"
            : sheet.Columns > 1 && sheet.PitchX < sheet.LabelWidth - Rounding ? $"labels {Mm(sheet.LabelWidth)} wide overlap at a pitch of {Mm(sheet.PitchX)}"
            : sheet.Rows > 1 && sheet.PitchY < sheet.LabelHeight - Rounding ? $"labels {Mm(sheet.LabelHeight)} high overlap at a pitch of {Mm(sheet.PitchY)}"
            : null;
    }

    private static string Mm(double length) => length.ToString("0.##", CultureInfo.InvariantCulture) + " mm";
}
