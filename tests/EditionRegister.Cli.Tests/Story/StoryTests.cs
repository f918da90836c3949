using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace EditionRegister.Cli.Tests;

/// <summary>
/// A small studio's year, chapter by chapter in one register, from <c>new</c> to <c>sell</c> and a certificate. Every chapter is an approved text: the lines
/// typed ("$ edreg ..."), and after each the whole of what the program said, with its exit code in brackets where that is not 0.
/// What was said instead lies beside the approved text in the output folder, as <c>.received</c>. A story in the folder Apart has a register of its own.
/// </summary>
public sealed partial class StoryTests
{
    private const string Prompt = "$ ";

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Story");

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Says_what_is_approved_in_every_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;

        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            List<(string Approved, string Said)> chapters = [];

            foreach (var story in Stories())
            {
                using var cli = Begin();
                chapters.AddRange(story.Select(chapter => (File.ReadAllText(chapter).ReplaceLineEndings("\n"), Said(cli, chapter))));
            }

            Assert.NotEmpty(chapters);
            Assert.All(chapters, chapter => Assert.Equal(chapter.Approved, chapter.Said));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // The second opinion is the JSON reader of .NET.
    [Fact]
    public void Says_all_of_it_to_machines_too()
    {
        foreach (var story in Stories())
        {
            using var cli = Begin();
            Assert.All(story.SelectMany(Lines), pair => SaysToMachines(cli, pair.Line, pair.Approved));
        }
    }

    [Fact]
    public void Uses_every_command_that_touches_a_register()
    {
        var typed = Stories().SelectMany(story => story).SelectMany(Lines).Select(pair => pair.Line).ToList();

        // The demo makes a register of its own, and a version needs none.
        var unused = HelpTests.EveryCommand.Select(row => row.Data).Where(command => command is not ("version" or "demo"))
            .Where(command => !typed.Exists(line => $"{line} ".StartsWith($"edreg {command} ", StringComparison.Ordinal)));

        Assert.Empty(unused);
    }

    private static IEnumerable<string[]> Stories() =>
        [.. Files(Folder).Take(1).Select(_ => Files(Folder)), .. Files(Path.Combine(Folder, "Apart")).Select(story => new[] { story })];

    private static string[] Files(string folder) => Directory.Exists(folder) ? [.. Directory.GetFiles(folder, "*.txt").Order(StringComparer.Ordinal)] : [];

    private static CliRun Begin()
    {
        CliRun cli = new();
        cli.Set("EDREG_REGISTER", Path.Combine(cli.Folder, "studio"));
        File.WriteAllText(Path.Combine(cli.Folder, "prints.csv"), "Artist,Title,Edition no.,Edition of,Signed,Colour notes\r\nAda Brandt,Môle,3/20,20,yes,\"blue\nand grey\"\r\nAda Brandt,Môle,about 5,20,no,\r\n");
        File.WriteAllText(Path.Combine(cli.Folder, "faulty.csv"), "maker,title,number,edition size,signed\r\nAda Brandt,Dyke,21/20,20,perhaps\r\nAda Brandt,Dyke,3/20,20,yes\r\nAda Brandt,Dyke,3/20,20,yes\r\n");
        File.WriteAllText(Path.Combine(cli.Folder, "words.csv"), "title,maker,number,edition size,inscription\r\nMôle,Ada Brandt,Exemplar 3/75,75 plus 10 A/P,\r\nMôle,Ada Brandt,Épreuve d'artiste 3/10,75 plus 10 A/P,\"A. Brandt del., B. Okker sc.\"\r\nDyke,Ada Brandt,S/P 2/5,c. 50,\r\n");
        StoryPictures.Lay(cli.Folder);

        return cli;
    }

    private static void SaysToMachines(CliRun cli, string line, string approved)
    {
        var said = cli.Typed(line, "--json");

        if (line.StartsWith(CliRun.NextDay, StringComparison.Ordinal))
        {
            return;
        }

        // What is typed wrongly is told in words, to machines too.
        if (ExitCodeIn(approved) == "[2]")
        {
            Assert.Equal(approved.TrimEnd(), said.TrimEnd());

            return;
        }

        using var document = JsonDocument.Parse(cli.Output.ToString());
        Assert.Equal("edreg/1", document.RootElement.GetProperty("format").GetString());
        Assert.Equal("", cli.Error.ToString());
        Assert.Equal(ExitCodeIn(approved), ExitCodeIn(said));
        Assert.All(Sentences(cli, document.RootElement), sentence => Assert.Equal(approved.Split('\n')[0], sentence));
    }

    private static IEnumerable<(string Line, string Approved)> Lines(string chapter) =>
        from part in $"\n{File.ReadAllText(chapter).ReplaceLineEndings("\n")}".Split($"\n{Prompt}").Skip(1)
        let lines = part.Split('\n', 2)
        select (lines[0], lines[^1]);

    private static IEnumerable<string> Sentences(CliRun cli, JsonElement root) =>
        from name in new[] { "done", "refused" }
        where root.TryGetProperty(name, out _)
        select root.GetProperty(name).GetProperty("message").GetString()!.Replace(cli.Folder, "/home/mira", StringComparison.Ordinal);

    private static string ExitCodeIn(string said) => EndsWithCode().Match(said).Value.TrimEnd();

    private static string Said(CliRun cli, string chapter)
    {
        StringBuilder said = new();

        foreach (var (line, _) in Lines(chapter))
        {
            said.Append(CultureInfo.InvariantCulture, $"{Prompt}{line}\n{cli.Typed(line)}");
        }

        // Heads answer for every byte of the logbook, which other tests hold; here they would change with every fact added to it.
        var text = Head().Replace(said.ToString(), "[head]");
        File.WriteAllText(Path.ChangeExtension(chapter, ".received"), text);

        return text;
    }

    [GeneratedRegex("[0-9a-f]{64}")]
    private static partial Regex Head();

    [GeneratedRegex(@"\[\d+\]\n*\z")]
    private static partial Regex EndsWithCode();
}
