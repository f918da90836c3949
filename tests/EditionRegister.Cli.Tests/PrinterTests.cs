using System.Text.Json;
using CsCheck;

namespace EditionRegister.Cli.Tests;

public sealed class PrinterTests : IDisposable
{
    private readonly StringWriter _output = new() { NewLine = "\n" };

    public void Dispose() => _output.Dispose();

    [Fact]
    public void Aligns_a_table_and_leaves_no_blanks_at_the_end_of_a_line()
    {
        Printer printer = new(_output, isJson: false);

        printer.Table(
            [new Column("title"), new Column("size", IsRight: true), new Column("state")],
            [["Harbour", "12", "closed"], ["Môle", "7", ""]]);

        Assert.Equal("title    size  state\nHarbour    12  closed\nMôle        7\n", _output.ToString());
    }

    [Fact]
    public void Prints_the_heads_of_an_empty_table()
    {
        Printer printer = new(_output, isJson: false);

        printer.Table([new Column("title"), new Column("size", IsRight: true)], []);

        Assert.Equal("title  size\n", _output.ToString());
    }

    [Fact]
    public void Shows_what_could_drive_a_terminal_instead_of_sending_it()
    {
        Printer printer = new(_output, isJson: false);

        printer.Line("Har\u001b[2Jbour");
        printer.Table([new Column("title")], [["Har\u0007bour"]]);

        Assert.DoesNotContain('\u001b', _output.ToString());
        Assert.DoesNotContain('\u0007', _output.ToString());
    }

    [Fact]
    public void Never_wraps_a_long_line()
    {
        Printer printer = new(_output, isJson: false);
        var title = string.Join(' ', Enumerable.Repeat("Harbour", 200));

        printer.Line(title);
        printer.Table([new Column("title")], [[title]]);

        Assert.Equal($"{title}\ntitle\n{title}\n", _output.ToString());
    }

    // The second opinion is the JSON reader of .NET: whatever was cut where, it reads back what was written.
    [Fact]
    public void Streams_JSON_that_reads_back_as_written()
    {
        Gen.OneOf(Gen.Const("Môle 🖼️ "), Gen.Const("x"), Gen.Const("\"\\\u0001€")).Array[0, 3000].Sample(
            parts =>
            {
                StringWriter output = new();
                var text = string.Concat(parts);

                new Printer(output, isJson: true).Json(json =>
                {
                    json.WriteString("whole", text);
                    json.WriteStartArray("parts");
                    Array.ForEach(parts, json.WriteStringValue);
                    json.WriteEndArray();
                });

                using var document = JsonDocument.Parse(output.ToString());
                Assert.Equal("edreg/1", document.RootElement.GetProperty("format").GetString());
                Assert.Equal(text, document.RootElement.GetProperty("whole").GetString());
                Assert.Equal(parts, document.RootElement.GetProperty("parts").EnumerateArray().Select(part => part.GetString()));
            },
            iter: 30);
    }
}
