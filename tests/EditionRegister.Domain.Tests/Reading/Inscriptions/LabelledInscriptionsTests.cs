using System.Globalization;
using EditionRegister.Domain.Reading.Inscriptions;

namespace EditionRegister.Domain.Tests.Reading.Inscriptions;

/// <summary>
/// Inscriptions of museums (tests/data/README.md), against what people read in them: no wrong number where they saw none, at most one in a
/// hundred elsewhere, and nine in ten exact in all seven columns.
/// </summary>
public sealed class LabelledInscriptionsTests
{
    private static readonly string Folder = Path.Combine(Clone.Folder, "tests", "data");

    [Theory]
    [InlineData("inscriptions_labelled_open.tsv", 150)]
    [InlineData("inscriptions_read_by_hand.tsv", 200)]
    public void The_aims_are_held(string file, int rows)
    {
        var (exact, answered, wrong) = (0, 0, 0);
        List<string> onNone = [];

        foreach (var row in Rows(file))
        {
            var read = EditionStatementReader.Read(row["text"]);
            var said = Said(read);
            exact += IsExact(row, read.Kind, said) ? 1 : 0;
            answered += read.Kind == StatementKind.Declined ? 0 : 1;
            wrong += read.Number is not null && said["number"] != row["number"] ? 1 : 0;
            onNone.AddRange(row["kind"] == "none" && (read.Number ?? read.Of ?? read.State) is not null ? [row["text"]] : []);
        }

        Assert.Equal(rows, Rows(file).Count);
        Assert.Empty(onNone);
        Assert.InRange(wrong, 0, answered / 100);
        Assert.InRange(exact, rows * 9 / 10, rows);
    }

    [Fact]
    public void What_is_written_of_any_inscription_reads_as_the_same_again()
    {
        var different = Rows("inscriptions.tsv")
            .Select(row => EditionStatementReader.Read(row["text"]))
            .Where(read => read.Kind is not (StatementKind.None or StatementKind.Declined))
            .Where(read => StatementValues.Of(EditionStatementReader.Read(read.Write())) != StatementValues.Of(read))
            .Select(read => read.Write());

        Assert.Empty(different);
    }

    [Fact]
    public void What_is_read_and_what_is_left_are_the_whole_text()
    {
        foreach (var row in Rows("inscriptions.tsv"))
        {
            var (text, read) = (row["text"], EditionStatementReader.Read(row["text"]));
            var kept = string.Concat(read.Left) + text[read.Span];

            Assert.All(text.Where(char.IsLetterOrDigit).Distinct(), letter => Assert.Contains(letter, kept));
        }
    }

    private static bool IsExact(Dictionary<string, string> row, StatementKind kind, Dictionary<string, string> said) =>
        kind == StatementKind.Declined ? row["kind"] == "ambiguous"
        : said.All(one => (one.Key == "kind" && row["kind"] == "ambiguous") || string.Equals(one.Value, one.Key == "roman" && row["roman"].Length == 0 ? "no" : row[one.Key], StringComparison.OrdinalIgnoreCase));

    private static Dictionary<string, string> Said(EditionStatement read) => new()
    {
        ["kind"] = read.Kind switch { StatementKind.Numbered => "numbered", StatementKind.Proof => "proof", StatementKind.State => "state", StatementKind.Size => "size-statement", StatementKind.Open => "open/unnumbered", _ => "none" },
        ["series"] = read.Series ?? "",
        ["number"] = Figure(read.Number),
        ["of"] = Figure(read.Of),
        ["roman"] = read.IsRoman ? "yes" : "no",
        ["state_no"] = Figure(read.State),
        ["state_of"] = Figure(read.StateOf),
    };

    private static string Figure(int? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static List<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, file));
        var columns = lines[0].Split('\t');

        return [.. lines.Skip(1).Select(line => columns.Zip(line.Split('\t')).ToDictionary(one => one.First, one => one.Second))];
    }
}
