using System.Globalization;
using System.Text;

namespace EditionRegister.Cli.Tests;

/// <summary>Runs every console block of the README, in order, and holds its output against what is printed there. With EDREG_APPROVE=1 the README is brought up to the day.</summary>
public sealed class ReadmeTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void What_the_readme_shows_is_what_the_program_says()
    {
        var path = Path.Combine(Clone.Folder, "README.md");
        var readme = File.ReadAllText(path).ReplaceLineEndings("\n");
        _cli.Time.SetLocalTimeZone(TimeZoneInfo.Utc);
        _cli.CurrentDirectory = Directory.CreateDirectory(Path.Combine(_cli.Folder, "clone")).FullName;
        _cli.Time.SetUtcNow(new DateTimeOffset(2026, 3, 20, 9, 0, 0, TimeSpan.Zero));

        var said = Run(readme);

        if (Environment.GetEnvironmentVariable("EDREG_APPROVE") == "1")
        {
            File.WriteAllText(path, said);
        }

        Assert.Contains("$ edreg check", readme, StringComparison.Ordinal);
        Assert.Equal(said, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void The_readme_has_exactly_the_two_commands_first()
    {
        var readme = File.ReadAllText(Path.Combine(Clone.Folder, "README.md")).ReplaceLineEndings("\n");

        Assert.Equal(
            "\ndotnet run --project src/EditionRegister.Cli -- demo\ndotnet test EditionRegister.sln\n",
            readme.Split("```")[1]);
    }

    /// <summary>The README with the output of the day in its console blocks.</summary>
    private string Run(string readme)
    {
        StringBuilder text = new();
        var block = "";

        foreach (var line in readme.TrimEnd('\n').Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                block = block.Length > 0 ? "" : line[3..].Length == 0 ? "plain" : line[3..];
                text.Append(line).Append('\n');
            }
            else if (block == "console")
            {
                Console(line, text);
            }
            else
            {
                Keep(block, line);
                text.Append(line).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>A block named "csv FILE" is a file of that name, in the folder the commands run in.</summary>
    private void Keep(string block, string line)
    {
        if (block.StartsWith("csv ", StringComparison.Ordinal))
        {
            File.AppendAllText(Path.Combine(_cli.Services.CurrentDirectory, block[4..]), line + "\r\n");
        }
    }

    private void Console(string line, StringBuilder text)
    {
        if (!line.StartsWith("$ ", StringComparison.Ordinal))
        {
            return;
        }

        text.Append(line).Append('\n');

        if (line.StartsWith("$ export ", StringComparison.Ordinal))
        {
            var parts = line[9..].Split('=');
            _cli.Set(parts[0], parts[1]);
        }
        else
        {
            text.Append(Said(line[2..]));
            _cli.Time.Advance(TimeSpan.FromMinutes(1));
        }
    }

    /// <summary>Exit codes are left out: the README shows what a person sees.</summary>
    private string Said(string line)
    {
        _cli.Typed(line);

        return string.Create(CultureInfo.InvariantCulture, $"{_cli.Output}{_cli.Error}").Replace(_cli.Folder, "/home/mira", StringComparison.Ordinal);
    }
}
