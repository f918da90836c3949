using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace EditionRegister.Domain.Documents;

/// <summary>A statement as the register stores it: JSON whose names and order never change, the same text for the same statement.</summary>
public static class CertificateStatementText
{
    // Stored and committed to, never put into a page: letters of all scripts stand as they are.
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(CertificateStatement statement)
    {
        ArgumentNullException.ThrowIfNull(statement);

        using MemoryStream stream = new();

        using (Utf8JsonWriter json = new(stream, Plain))
        {
            json.WriteStartObject();
            json.WriteString("heading", statement.Heading);
            json.WriteStartArray("lines");

            foreach (var line in statement.Lines)
            {
                json.WriteStartObject();
                json.WriteString("key", line.Key);
                json.WriteString("label", line.Label);
                json.WriteString("value", line.Value);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("code", statement.Code);
            json.WriteString("serial", statement.Serial);
            json.WriteString("issued", statement.Issued);
            json.WriteString("link", statement.Link);
            json.WriteString("signature-label", statement.SignatureLabel);
            json.WriteString("date-label", statement.DateLabel);
            json.WriteString("caution", statement.Caution);
            json.WriteString("logbook-sentence", statement.LogbookSentence);
            json.WriteString("page-word", statement.PageWord);
            json.WriteString("language", statement.Language);
            json.WriteString("page", statement.Page.Word);
            json.WriteString("supersedes", statement.Supersedes);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Null where the text is damaged or says less than a statement.</summary>
    public static CertificateStatement? Read(string? text)
    {
        try
        {
            using var json = JsonDocument.Parse(text ?? "");

            return Read(json.RootElement);
        }
        catch (Exception damage) when (damage is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException)
        {
            // Not JSON, a part missing, a part of another type, or half of a character: all of it damage.
            return null;
        }
    }

    private static CertificateStatement Read(JsonElement json) => new()
    {
        Heading = Text(json, "heading"),
        Lines = Lines(json.GetProperty("lines")),
        Code = Text(json, "code"),
        Serial = Text(json, "serial"),
        Issued = Text(json, "issued"),
        Link = json.GetProperty("link").GetString(),
        SignatureLabel = Text(json, "signature-label"),
        DateLabel = Text(json, "date-label"),
        Caution = Text(json, "caution"),
        LogbookSentence = Text(json, "logbook-sentence"),
        PageWord = Text(json, "page-word"),
        Language = Text(json, "language"),
        Page = PageSize.Of(Text(json, "page")) ?? throw new JsonException(),
        Supersedes = json.GetProperty("supersedes").GetString(),
    };

    private static List<StatementLine> Lines(JsonElement json)
    {
        List<StatementLine> lines = [];

        foreach (var line in json.EnumerateArray())
        {
            lines.Add(new StatementLine(Text(line, "key"), Text(line, "label"), Text(line, "value")));
        }

        return lines;
    }

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString() ?? throw new JsonException();
}
