using System.Text.Json;
using EditionRegister.Domain.Documents;
using EditionRegister.Store.Reading;

namespace EditionRegister.Cli;

/// <summary>Entries of the logbook, as people and as machines read them.</summary>
internal static class LogbookPage
{
    private static readonly Column[] Columns = [new("entry", IsRight: true), new("recorded"), new("deed"), new("about"), new("batch", IsRight: true)];

    public static void Print(Printer printer, IReadOnlyList<LogbookLine> entries, LogbookHead head) => printer.Show(
        text: () =>
        {
            printer.Table(Columns, entries.Select(entry => (string[])[Counted.Figure(entry.N), entry.At, Called.Plain(entry.Deed), entry.Root, Batch(entry) ?? ""]));
            printer.Line($"{Counted.Figure(entries.Count)} of {Counted.Of(head.N, "entry", "entries")}.");
        },
        json: json =>
        {
            json.Each("entries", entries, entry => Write(json, entry));
            json.WriteNumber("all", head.N);
        });

    public static void Print(Printer printer, LogbookLine entry) => printer.Show(
        text: () =>
        {
            printer.Facts(
                ("Entry", Counted.Figure(entry.N)),
                ("Recorded", entry.At),
                ("Deed", Called.Plain(entry.Deed)),
                ("About", entry.Root),
                ("Batch", Batch(entry)),
                ("Head", entry.Head.Head),
                ("Body", entry.Body));
        },
        json: json =>
        {
            Write(json, entry);
            json.WriteString("body", entry.Body);
        });

    private static string? Batch(LogbookLine entry) => entry.Batch is { } batch ? Counted.Figure(batch) : null;

    private static void Write(Utf8JsonWriter json, LogbookLine entry)
    {
        json.WriteNumber("entry", entry.N);
        json.WriteString("at", entry.At);
        json.WriteString("deed", entry.Deed);
        json.WriteString("root", entry.Root);
        json.Whole("batch", entry.Batch);
        json.WriteString("head", entry.Head.Head);
    }
}
