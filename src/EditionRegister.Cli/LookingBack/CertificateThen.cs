using System.Text.Json;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.Cli;

/// <summary>The certificate that stood valid for a sheet on a day, as its frozen statement has it.</summary>
internal static class CertificateThen
{
    public static void Print(Printer printer, CertificatePreview? certificate)
    {
        printer.Line();

        if (certificate?.Statement is not { } statement)
        {
            printer.Line(certificate?.Refusal ?? "No certificate stood for it.");

            return;
        }

        printer.Line($"Certificate {statement.Serial} stood for it, issued {statement.Issued}:");
        printer.Facts([.. statement.Lines.Select(line => (line.Label, (string?)line.Value))]);
    }

    public static void Write(Utf8JsonWriter json, CertificatePreview? certificate)
    {
        if (certificate?.Statement is not { } statement)
        {
            json.WriteNull("certificate");

            return;
        }

        json.WriteStartObject("certificate");
        json.WriteString("serial", statement.Serial);
        json.WriteString("issued", statement.Issued);
        json.Each("lines", statement.Lines, line =>
        {
            json.WriteString("key", line.Key);
            json.WriteString("label", line.Label);
            json.WriteString("value", line.Value);
        });
        json.WriteEndObject();
    }
}
