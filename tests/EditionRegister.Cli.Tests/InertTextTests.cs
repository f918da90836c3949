using System.Globalization;
using System.Text.Json;

namespace EditionRegister.Cli.Tests;

/// <summary>What somebody wrote into a title, a name or a file never reaches the terminal as more than text.</summary>
public sealed class InertTextTests : IDisposable
{
    // Escape sequences that clear, retitle and link; a bell, a new line, a C1 introducer; an override that turns reading round.
    private const string Hostile = "Har\u001b[2J\u001b]0;x\u0007\nbour\r\u009b31m\u202ecba\u200b";

    private readonly CliRun _cli = new();

    public InertTextTests()
    {
        _cli.Run("new", "studio", "--name", Hostile);
        _cli.Set("EDREG_REGISTER", Path.Combine(_cli.Folder, "studio"));
        File.WriteAllText(Path.Combine(_cli.Folder, "hostile.csv"), $"maker,title,number,edition size,{"\u001b[31mred"}\r\nAda Brandt,\"{Hostile}\",\"{Hostile}\",20,x\r\nAda Brandt,Dyke,2/20,\"{Hostile}\",x\r\n");
    }

    private static readonly string[][] Lines =
    [
        ["person", "add", Hostile, "--contact", Hostile],
        ["place", "add", Hostile],
        ["work", "add", "--title", Hostile, "--maker", "1", "--technique", Hostile],
        ["run", "add", "1", "--pile", "3", "--paper", Hostile, "--place", Hostile],
        ["sort", "kept", "--work", "1", "--pile", "1-2"],
        ["declare", "1", "--numbering", "1-2"],
        ["number", "1"],
        ["inscribe", "--edition", "1", "--sheets", "1", "--pencilled", Hostile, "--signature", Hostile, "--inscription", Hostile],
        ["sell", "--edition", "1", "--sheets", "1", "--buyer-unknown", "--note", Hostile],
        ["list"],
        ["list", Hostile],
        ["map", "1"],
        ["work", "list"],
        ["work", "show", "1"],
        ["person", "list"],
        ["person", "show", "1"],
        ["place", "list"],
        ["check"],
        ["log", "3"],
        ["read", "hostile.csv"],
        ["person", "show", $"nobody {Hostile}"],
        ["sort", Hostile, "--sheets", "1"],
        ["show", Hostile],
    ];

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Shows_it_and_does_not_send_it()
    {
        foreach (var line in Lines)
        {
            _cli.Run(line);

            Assert.DoesNotContain(ToTheTerminal(), IsDangerous);
        }

        Assert.Equal(0, _cli.Run("list"));
        Assert.Contains(@"Har␛[2J␛]0;x␇␊bour␍\u{9B}31m\u{202E}cba\u{200B}", ToTheTerminal(), StringComparison.Ordinal);
    }

    [Fact]
    public void Gives_machines_the_text_itself()
    {
        foreach (var line in Lines.Take(3))
        {
            _cli.Run(line);
        }

        _cli.Run("work", "show", "1", "--json");

        using var document = JsonDocument.Parse(_cli.Output.ToString());
        Assert.Equal(Hostile, document.RootElement.GetProperty("technique").GetString());
        Assert.DoesNotContain('\u001b', _cli.Output.ToString());
        Assert.Single(_cli.Output.ToString(), c => c == '\n');
    }

    private string ToTheTerminal() => $"{_cli.Output}{_cli.Error}";

    private static bool IsDangerous(char c) =>
        c != '\n' && CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
}
