using System.Globalization;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Lettering;

namespace EditionRegister.Bench.Readings;

/// <summary>Museum inscriptions labelled by hand, against what the reader makes of them.</summary>
internal static class InscriptionFigures
{
    private static readonly string[] Typed = ["kind", "series", "number", "of", "roman", "state_no", "state_of"];

    public static void Print(string folder, TextWriter output)
    {
        var file = Directory.GetFiles(folder, "inscriptions_labelled*.tsv").Order(StringComparer.Ordinal).FirstOrDefault();

        if (file is null)
        {
            output.WriteLine("inscriptions: no inscriptions_labelled*.tsv there.");

            return;
        }

        Print(file, "labelled", output);

        var byHand = Path.Combine(folder, "inscriptions_read_by_hand.tsv");

        if (File.Exists(byHand))
        {
            Print(byHand, "read by hand", output);
        }

        All(folder, output);
    }

    private static void Print(string file, string how, TextWriter output)
    {
        var table = TableFile.Read(file);
        var (exact, declined, wrong, wrongOnNone, answered, ambiguous) = (0, 0, 0, 0, 0, 0);
        List<string> disagreements = [];

        foreach (var row in table.Rows)
        {
            var label = Typed.Select(column => table[row, column]).ToArray();
            var read = EditionStatementReader.Read(table[row, "text"]);
            var said = AsLabelled(read);
            label[4] = label[4] == "yes" ? "yes" : "no";
            label[1] = label[1].ToUpperInvariant();
            said[1] = said[1].ToUpperInvariant();

            if (read.Kind == StatementKind.Declined)
            {
                declined++;
                ambiguous += label[0] == "ambiguous" ? 1 : 0;
                exact += label[0] == "ambiguous" ? 1 : 0;
                disagreements.AddRange(label[0] == "ambiguous" ? [] : [$"declined  {table[row, "text"]}  | {how} {string.Join(',', label)} | {read.WhyNot}"]);
                continue;
            }

            answered++;
            var isExact = (label[0] == "ambiguous" ? said.Skip(1).SequenceEqual(label.Skip(1)) : said.SequenceEqual(label));
            var wrongNumber = read.Number is not null && label[2] != said[2];
            exact += isExact ? 1 : 0;
            wrong += wrongNumber ? 1 : 0;
            wrongOnNone += label[0] == "none" && (read.Number ?? read.Of ?? read.State) is not null ? 1 : 0;

            if (!isExact)
            {
                disagreements.Add($"{(wrongNumber ? "WRONG" : "differs")}  {table[row, "text"]}  | {how} {string.Join(',', label)} | read {string.Join(',', said)}");
            }
        }

        var rows = table.Rows.Count;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"inscriptions: {rows} rows of {Path.GetFileName(file)}; exact in seven columns {exact} ({100.0 * exact / rows:0.0} %), declined {declined} (of them ambiguous {ambiguous}), answered {answered}, wrong number {wrong} ({100.0 * wrong / Math.Max(1, answered):0.0} % of answered), a figure on rows labelled none {wrongOnNone}"));

        foreach (var line in disagreements)
        {
            output.WriteLine("  " + line);
        }
    }

    private static void All(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, "inscriptions.tsv");

        if (!File.Exists(path))
        {
            return;
        }

        var table = TableFile.Read(path);
        var texts = table.Rows.Select(row => table[row, "text"]).ToList();
        var kinds = texts.GroupBy(text => EditionStatementReader.Read(text).Kind).OrderByDescending(kind => kind.Count()).Select(kind => $"{kind.Key} {kind.Count()}");
        var roles = texts.SelectMany(LetteringReader.Read).GroupBy(role => role.Role.Word, StringComparer.Ordinal).OrderByDescending(role => role.Count()).Select(role => $"{role.Key} {role.Count()} (named {role.Count(one => one.Name.Length > 0)})");

        output.WriteLine($"inscriptions.tsv: {texts.Count} rows: {string.Join(", ", kinds)}");
        output.WriteLine($"lettering in inscriptions.tsv: {string.Join(", ", roles)}");
        InscriptionSpeed.Print(texts, output);
    }

    private static string[] AsLabelled(EditionStatement read) =>
    [
        read.Kind switch
        {
            StatementKind.Numbered => "numbered",
            StatementKind.Proof => "proof",
            StatementKind.State => "state",
            StatementKind.Size => "size-statement",
            StatementKind.Open => "open/unnumbered",
            _ => "none",
        },
        read.Series ?? "",
        Figure(read.Number),
        Figure(read.Of),
        read.IsRoman ? "yes" : "no",
        Figure(read.State),
        Figure(read.StateOf),
    ];

    private static string Figure(int? value) => value?.ToString(CultureInfo.InvariantCulture) ?? "";
}
