using System.Text;
using EditionRegister.Domain;
using EditionRegister.Formats.Csv;

namespace EditionRegister.Formats.Tests.Csv;

public sealed class CsvRefusalTests
{
    [Theory]
    [InlineData("", "csv-empty", "prints.csv was not read: it is empty. Its first line must name the columns.")]
    [InlineData("\r\n\r\n", "csv-empty", "prints.csv was not read: it is empty. Its first line must name the columns.")]
    [InlineData("title,,year\n", "csv-column-without-name", "prints.csv was not read: column 2 of the header (line 1) has no name. Name the column, or delete it in every row.")]
    [InlineData("\n\ntitle, \n", "csv-column-without-name", "prints.csv was not read: column 2 of the header (line 3) has no name. Name the column, or delete it in every row.")]
    [InlineData("title,Title \n", "csv-column-twice", "prints.csv was not read: the header (line 1) names the column “Title” twice. Give each column a name of its own.")]
    [InlineData("a,b\n1,\"x\",3\n1\n1,2", "csv-ragged", "prints.csv was not read: line 2 has 3 fields, the header has 2; line 3 has 1 field, the header has 2. Put quotes round every field that holds the delimiter, and give every row all its fields.")]
    [InlineData("a,b\n1,\"x\ny\"\n1,\"never\nclosed\n1,2\n", "csv-open-quote", "prints.csv was not read: the quote opened on line 4 is never closed. Close it, or write a quote inside a field twice (\"\").")]
    [InlineData("a,b,c\n1,\"\"\"x\n\",\"y\n1,2,3\n", "csv-open-quote", "prints.csv was not read: the quote opened on line 3 is never closed. Close it, or write a quote inside a field twice (\"\").")]
    [InlineData("a,b\n1,\"x\" y\n", "csv-text-after-quote", "prints.csv was not read: the record on line 2 has text after a closing quote. Write a quote inside a field twice (\"\").")]
    [InlineData("a,b\n1,12\" high\n", "csv-stray-quote", "prints.csv was not read: the record on line 2 has a quote inside a field that does not start with one. Put the whole field in quotes and write the inner quote twice (\"\").")]
    [InlineData("a,b\r\n1,2\r\n1,\0\r\n", "csv-nul", "prints.csv was not read: line 3 holds a NUL character, so this is not a text file or it is damaged. Save it again as “CSV UTF-8”.")]
    public void Says_what_is_wrong_and_what_to_do(string text, string name, string message)
    {
        var refused = Assert.Throws<RefusedException>(() => CsvFile.Read(Encoding.UTF8.GetBytes(text), "prints.csv"));

        Assert.Equal(name, refused.Name);
        Assert.Equal(message, refused.Message);
    }

    [Fact]
    public void Names_the_line_and_the_byte_that_is_not_utf_8()
    {
        byte[] windows1252 = [.. "title,maker\r\nHafen,M"u8, 0xFC, .. "ller\r\n"u8];

        var refused = Assert.Throws<RefusedException>(() => CsvFile.Read(windows1252, "prints.csv"));

        Assert.Equal("csv-not-utf-8", refused.Name);
        Assert.Equal("prints.csv was not read: line 2 holds the byte 0xFC, which is not UTF-8. Save it again as “CSV UTF-8”.", refused.Message);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Refuses_utf_16(bool bigEndian)
    {
        var encoding = new UnicodeEncoding(bigEndian, byteOrderMark: true);
        byte[] content = [.. encoding.GetPreamble(), .. encoding.GetBytes("title,maker\r\n")];

        var refused = Assert.Throws<RefusedException>(() => CsvFile.Read(content, "prints.csv"));

        Assert.Equal("csv-utf-16", refused.Name);
        Assert.Equal("prints.csv was not read: it is UTF-16 text, not UTF-8. Save it again as “CSV UTF-8”.", refused.Message);
    }

    [Fact]
    public void Names_twenty_ragged_lines_and_counts_the_rest()
    {
        var text = "a,b\n" + string.Concat(Enumerable.Repeat("1,2,3\n", 23));

        var refused = Assert.Throws<RefusedException>(() => CsvFile.Read(Encoding.UTF8.GetBytes(text), "prints.csv"));

        Assert.Contains("line 21 has 3 fields, the header has 2; and 3 more such lines. Put", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("line 22", refused.Message, StringComparison.Ordinal);
    }
}
