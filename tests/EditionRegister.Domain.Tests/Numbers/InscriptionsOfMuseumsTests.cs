using System.Globalization;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Tests.Numbers;

/// <summary>What cataloguers of open museum collections found on prints (sources and licence: data/README.md).</summary>
public sealed class InscriptionsOfMuseumsTests
{
    private static readonly IReadOnlyList<Labelled> Rows =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "inscriptions_labelled.tsv"))
            .Skip(1)
            .Select(line => line.Split('\t'))
            .Select(cells => new Labelled(cells[2], cells[3], cells[4], Figure(cells[5]), Figure(cells[6]))),
    ];

    [Fact]
    public void Nothing_that_bears_no_number_is_read_as_one()
    {
        var silent = Rows.Where(row => row.Kind is "none" or "open/unnumbered" or "size-statement" or "state").ToList();

        var read = silent.Where(row => PencilledNumber.TryParse(row.Text, out _)).Select(row => row.Text);

        Assert.Equal(32, silent.Count);
        Assert.Empty(read);
    }

    [Fact]
    public void What_is_read_is_what_the_label_says()
    {
        var answered = Rows.Select(row => (Row: row, Read: Read(row.Text))).Where(pair => pair.Read is not null).ToList();

        Assert.All(answered, pair => Assert.Equal(
            (pair.Row.Series, pair.Row.Number, pair.Row.Of),
            (pair.Read!.Kind == NumberingKind.Numbered ? "edition" : pair.Read.Kind.Mark, pair.Read.Number, pair.Read.Of)));
    }

    [Fact]
    public void Plain_numbers_are_read_and_the_rest_is_left_to_a_reader()
    {
        var read = Rows.Where(row => Read(row.Text) is not null).Select(row => row.Text).Order(StringComparer.Ordinal);

        Assert.Equal(["12/12 HC", "50/70", "A.P. 11/13", "A/P 2/15", "I/XVIII HC", "TP", "V/ XVIII HC"], read);
        Assert.Equal(69, Rows.Count);
    }

    private static PencilledNumber? Read(string text) => PencilledNumber.TryParse(text, out var number) ? number : null;

    private static int? Figure(string cell) => cell.Length == 0 ? null : int.Parse(cell, CultureInfo.InvariantCulture);

    private sealed record Labelled(string Text, string Kind, string Series, int? Number, int? Of);
}
