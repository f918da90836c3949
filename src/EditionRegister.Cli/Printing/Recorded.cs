using System.Text.Json;

namespace EditionRegister.Cli;

/// <summary>What a deed recorded: one plain sentence for people, its facts for machines, and where there is more to see, that too.</summary>
internal sealed record Recorded(string Sentence, Action<Utf8JsonWriter> Json)
{
    /// <summary>Printed under the sentence; the machine form has it among its facts.</summary>
    public Action<Printer>? More { get; init; }

    /// <param name="printer">Where to print.</param>
    /// <param name="command">The words of the command: "work add".</param>
    public void Print(Printer printer, string command) => printer.Show(
        text: () =>
        {
            printer.Line(Sentence);
            More?.Invoke(printer);
        },
        json: json =>
        {
            json.WriteStartObject("done");
            json.WriteString("command", command);
            json.WriteString("message", Sentence);
            Json(json);
            json.WriteEndObject();
        });
}
