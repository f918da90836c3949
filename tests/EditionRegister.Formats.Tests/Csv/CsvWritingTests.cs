using System.Text;
using CsCheck;
using EditionRegister.Formats.Csv;
using Microsoft.VisualBasic.FileIO;

namespace EditionRegister.Formats.Tests.Csv;

public sealed class CsvWritingTests
{
    // Any text but NUL and half surrogates, which a register refuses; with much of what CSV is touchy about.
    private static readonly Gen<string> Field = Gen.OneOf(
        Gen.String[Gen.Char["ab ,;\"\r\n\t"], 0, 8],
        Gen.String[Gen.Char['\u0001', '\uD7FF'], 0, 6],
        Gen.OneOf(new[] { "", " ", "Ağaoğlu", "版画", "🖼", "-5", "=1+1", "\"\"", "\r\n" }.Select(text => Gen.Const(text)).ToArray()));

    private static readonly Gen<string[][]> Rows = Gen.Int[1, 5].SelectMany(width => Field.Array[width].Array[0, 6]);

    [Fact]
    public void Reading_what_was_written_gives_the_same_rows() =>
        Rows.Sample(rows => Assert.Equal(rows, CsvFile.Read(Written(rows), "x.csv").Rows.Select(row => row.Fields)));

    // Two columns at least: this other reader passes over a line of spaces alone.
    [Fact]
    public void Another_reader_sees_the_same_rows() =>
        Gen.Int[2, 4].SelectMany(width => Gen.String[Gen.Char["ab ,;\"é版"], 1, 8].Array[width].Array[1, 6])
            .Sample(rows => Assert.Equal(rows, SecondOpinion(Written(rows)).Skip(1)));

    [Fact]
    public void Quotes_only_what_must_be_quoted()
    {
        using MemoryStream stream = new();

        CsvFile.Write(stream, ["code", "title"], [["7KQ4-M2X3", " Harbour "], ["a,b", "say \"hi\""], ["c;d", null], ["e\rf", "g\nh"]]);

        Assert.Equal(
            "code,title\r\n7KQ4-M2X3, Harbour \r\n\"a,b\",\"say \"\"hi\"\"\"\r\nc;d,\r\n\"e\rf\",\"g\nh\"\r\n"u8.ToArray(),
            stream.ToArray());
    }

    [Fact]
    public void Refuses_a_row_of_another_length_and_half_a_surrogate_pair()
    {
        using MemoryStream stream = new();

        Assert.Throws<ArgumentException>(() => CsvFile.Write(stream, ["code", "title"], [["7KQ4-M2X3"]]));
        Assert.Throws<ArgumentException>(() => CsvFile.Write(stream, ["code"], [["\uD83D"]]));
    }

    private static byte[] Written(string[][] rows)
    {
        using MemoryStream stream = new();
        var width = rows.Length == 0 ? 1 : rows[0].Length;
        CsvFile.Write(stream, [.. Enumerable.Range(1, width).Select(i => $"column {i}")], rows);
        return stream.ToArray();
    }

    private static IEnumerable<string[]> SecondOpinion(byte[] content)
    {
        using TextFieldParser parser = new(new MemoryStream(content), Encoding.UTF8) { TrimWhiteSpace = false };
        parser.SetDelimiters(",");

        while (parser.ReadFields() is { } fields)
        {
            yield return fields;
        }
    }
}
