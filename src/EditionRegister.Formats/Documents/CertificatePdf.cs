using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents.Certificates;
using EditionRegister.Formats.Documents.Drawing;

namespace EditionRegister.Formats.Documents;

/// <summary>Draws a certificate as a PDF: the same statement and head give the same bytes.</summary>
public static class CertificatePdf
{
    /// <summary>Leaves the stream open.</summary>
    /// <exception cref="RefusedException">The link is too long for a QR code that a phone can read, or the wording for a page.</exception>
    public static void Write(Stream stream, CertificateStatement statement, LogbookHead head)
    {
        ArgumentNullException.ThrowIfNull(statement);

        using Typesetter type = new();
        var pages = new CertificateLayout(statement, head, type).Pages();
        PdfDrawing.Draw(stream, pages, type, new($"{statement.Heading} {statement.Code}", statement.Language, IssuedOn(statement)));
    }

    // A day without a time of day; what is no full date leaves the first day that a PDF can tell safely.
    private static DateTime IssuedOn(CertificateStatement statement) =>
        DateTime.TryParseExact(
            statement.Issued.Length >= 10 ? statement.Issued[..10] : statement.Issued,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal,
            out var day) ? day : DateTime.UnixEpoch;
}
