using System.Text.Json;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary>What reading a file in would do, or did, for machines.</summary>
internal static class ReadInJson
{
    public static void Write(Utf8JsonWriter json, ReadInReport report)
    {
        json.WriteString("file", report.File);
        json.WriteNumber("rows", report.Rows);
        json.WriteNumber("works", report.Works);
        json.WriteNumber("new_works", report.NewWorks);
        json.WriteNumber("new_editions", report.NewEditions);
        json.Each("columns", report.Columns, match =>
        {
            json.WriteString("header", match.Header);
            json.WriteString("column", match.Column?.Name);
            json.WriteBoolean("was_said", match.WasSaid);
        });
        Lines(json, "remarks", report.Remarks);
        Lines(json, "problems", report.Problems);
        json.Each("read_in_words", ReadInShown.Different(report), one =>
        {
            json.WriteString("text", one.Read.Text);
            json.WriteString("read_as", one.Read.ReadAs);
            json.WriteNumber("times", one.Times);
        });
        json.Whole("batch", report.Batch);
        json.WriteBoolean("was_read_before", report.WasReadBefore);
        json.WriteString("message", ReadInPage.LastLine(report));
    }

    private static void Lines(Utf8JsonWriter json, string name, IReadOnlyList<RowProblem> lines) => json.Each(name, lines, one =>
    {
        json.WriteNumber("line", one.Line);
        json.WriteString("column", one.Column);
        json.WriteString("value", one.Value);
        json.WriteString("what", one.What);
    });
}
