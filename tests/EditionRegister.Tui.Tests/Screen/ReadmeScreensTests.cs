using System.Text;
using EditionRegister.Tests;
using Terminal.Gui.Input;

namespace EditionRegister.Tui.Tests.Screen;

/// <summary>The screens that stand in the README are what the demo shows. EDREG_APPROVE=1 writes them anew.</summary>
public sealed class ReadmeScreensTests
{
    private static readonly Dictionary<string, string> Keys = new(StringComparer.Ordinal)
    {
        ["plan chest"] = "1",
        ["tray"] = "1/harbour\n\n",
        ["signing"] = "2/heron\n\ng",
    };

    [Fact]
    public async Task The_screens_in_the_readme_are_those_of_the_demo()
    {
        var path = Path.Combine(Clone.Folder, "README.md");
        var readme = (await File.ReadAllTextAsync(path)).ReplaceLineEndings("\n");

        var shown = await WithScreensOfTheDayAsync(readme);

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            await File.WriteAllTextAsync(path, shown);
        }

        Assert.Equal(Keys.Count, readme.Split("```screen ").Length - 1);
        Assert.Equal(shown, (await File.ReadAllTextAsync(path)).ReplaceLineEndings("\n"));
    }

    private static async Task<string> WithScreensOfTheDayAsync(string readme)
    {
        StringBuilder text = new();
        var isScreen = false;

        foreach (var line in readme.TrimEnd('\n').Split('\n'))
        {
            if (line.StartsWith("```screen ", StringComparison.Ordinal))
            {
                text.Append(line).Append('\n').Append(await ScreenAsync(line["```screen ".Length..])).Append('\n');
                isScreen = true;
            }
            else if (!isScreen || line == "```")
            {
                text.Append(line).Append('\n');
                isScreen = false;
            }
        }

        return text.ToString();
    }

    private static async Task<string> ScreenAsync(string name)
    {
        await using var house = await TestHouse.OnDemoAsync();
        using TestTerminal terminal = new(house.House, register: "Saltmarsh Print Studio", folder: "exports/demo/register");

        foreach (var key in Keys[name])
        {
            await terminal.PressAsync(key == '\n' ? Key.Enter : new Key(key));
        }

        return string.Join('\n', terminal.Lines).TrimEnd('\n');
    }
}
