using System.Text.Encodings.Web;
using System.Text.Json;
using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>
/// Prints results: plain text for people, or one JSON document for machines.
/// No colour, no wrapping: what a terminal shows and what a file receives are the same.
/// </summary>
internal sealed class Printer(TextWriter output, bool isJson)
{
    /// <summary>What every JSON document of the program calls its form.</summary>
    public const string Format = "edreg/1";

    // Relaxed: titles stay readable. Nothing of this goes into a web page.
    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public bool IsJson { get; } = isJson;

    /// <summary>Prints one of the two, as asked for.</summary>
    public void Show(Action text, Action<Utf8JsonWriter> json)
    {
        if (IsJson)
        {
            Json(json);
        }
        else
        {
            text();
        }
    }

    /// <summary>One line of text; what could drive a terminal is made visible.</summary>
    public void Line(string text = "") => output.WriteLine(SafeText.Show(text));

    /// <summary>Rows under heads, aligned by the width the cells have on a screen.</summary>
    public void Table(IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        foreach (var line in TextTable.Lines(columns, rows))
        {
            output.WriteLine(line);
        }
    }

    /// <summary>What is known of one thing, a label before each value; what is not known (null) is left out.</summary>
    public void Facts(params IReadOnlyList<(string Label, string? Value)> facts)
    {
        var known = facts.Where(fact => fact.Value is not null).ToList();
        var width = known.Count == 0 ? 0 : known.Max(fact => TextWidth.Of(fact.Label));

        foreach (var (label, value) in known)
        {
            Line($"{TextWidth.Pad(label, width)}  {value}");
        }
    }

    /// <summary>A heading with what stands under it; nothing at all where nothing does.</summary>
    public void Section(string heading, IReadOnlyList<Column> columns, IReadOnlyCollection<IReadOnlyList<string>> rows)
    {
        if (rows.Count > 0)
        {
            Line();
            Line(heading);
            Table(columns, rows);
        }
    }

    /// <summary>One document: an object that begins with its format, then what <paramref name="members"/> writes, streamed.</summary>
    public void Json(Action<Utf8JsonWriter> members)
    {
        using (Utf8JsonWriter json = new(new TextBuffer(output), Readable))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            members(json);
            json.WriteEndObject();
        }

        output.WriteLine();
    }
}
