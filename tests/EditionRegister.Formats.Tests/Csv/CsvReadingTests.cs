using System.Text;
using EditionRegister.Formats.Csv;

namespace EditionRegister.Formats.Tests.Csv;

public sealed class CsvReadingTests
{
    // RFC 4180, section 2, the examples of rules 1, 2, 5, 6 and 7, each with the same three columns above it.
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc", "zzz|yyy|xxx")]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc", "zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|bbb|ccc", "zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\r\nbb|ccc", "zzz|yyy|xxx")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")]
    public void Reads_the_examples_of_the_standard(string records, params string[] expected)
    {
        var content = Encoding.UTF8.GetBytes("field_name,field_2,field_3\r\n" + records);

        var table = CsvFile.Read(content, "rfc.csv");

        Assert.Equal(["field_name", "field_2", "field_3"], table.Headers);
        Assert.Equal(expected, table.Rows.Select(row => string.Join('|', row.Fields)));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    [InlineData("\r")]
    public void Tells_the_physical_line_of_each_record(string end)
    {
        var lines = string.Join(end, ["title,note", "Harbour,\"dry", "", "flat\"", "", "Heron,", "Reeds,x"]);

        var table = CsvFile.Read(Encoding.UTF8.GetBytes(lines), "prints.csv");

        Assert.Equal([2, 6, 7], table.Rows.Select(row => row.Line));
        Assert.Equal($"dry{end}{end}flat", table.Rows[0].Fields[1]);
    }

    [Theory]
    [InlineData("title;year\n\"Harbour, low tide\";2024", ';', "Harbour, low tide|2024")]
    [InlineData("title,year\nHarbour; low tide,2024", ',', "Harbour; low tide|2024")]
    [InlineData("\"a;b;c\",year\nHarbour,2024", ',', "Harbour|2024")]
    [InlineData("title\nHarbour", ',', "Harbour")]
    [InlineData("\r\n\r\ntitle;year\r\nHarbour;1,5", ';', "Harbour|1,5")]
    public void Takes_the_delimiter_from_the_header_line_outside_quotes(string text, char delimiter, string row)
    {
        var table = CsvFile.Read(Encoding.UTF8.GetBytes(text), "prints.csv");

        Assert.Equal(delimiter, table.Delimiter);
        Assert.Equal(row, string.Join('|', Assert.Single(table.Rows).Fields));
    }

    [Fact]
    public void Reads_with_and_without_a_byte_order_mark()
    {
        byte[] content = [0xEF, 0xBB, 0xBF, .. "\"title\",maker\nHafen bei Ebbe,Ağaoğlu"u8];

        var with = CsvFile.Read(content, "prints.csv");
        var without = CsvFile.Read(content[3..], "prints.csv");

        Assert.Equal(["title", "maker"], with.Headers);
        Assert.Equal(with.Headers, without.Headers);
        Assert.Equal(["Hafen bei Ebbe", "Ağaoğlu"], with.Rows[0].Fields);
    }

    [Fact]
    public void A_header_alone_has_no_rows()
    {
        var table = CsvFile.Read("code,title\r\n"u8.ToArray(), "prints.csv");

        Assert.Empty(table.Rows);
    }

    [Fact]
    public void Keeps_spaces_as_they_stand()
    {
        var table = CsvFile.Read("code,title\r\n 1 ,\t\r\n"u8.ToArray(), "prints.csv");

        Assert.Equal([" 1 ", "\t"], table.Rows[0].Fields);
    }
}
