using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using EditionRegister.Store;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Cli.Tests;

/// <summary>Runs the real program in this process, in a temporary folder of its own, and keeps what it printed.</summary>
internal sealed class CliRun : IDisposable
{
    /// <summary>Before a day, in a line of a story: the clock goes on to ten in the morning of that day.</summary>
    public const string NextDay = "date ";

    private readonly Dictionary<string, string> _environment = new(StringComparer.Ordinal);
    private readonly Randomness _randomness = new RepeatedRandomness();

    public string Folder { get; } = Directory.CreateTempSubdirectory("edreg-cli-").FullName;

    public string CurrentDirectory { get; set; } = "";

    public StringWriter Output { get; private set; } = new();

    public StringWriter Error { get; private set; } = new();

    /// <summary>Commands of a test instead of the program's own.</summary>
    public IReadOnlyList<Func<CommandContext, Command>>? Commands { get; set; }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 1, 10, 0, 0, TimeSpan.Zero));

    public AppServices Services => new()
    {
        Time = Time,
        Environment = name => _environment.GetValueOrDefault(name),
        CurrentDirectory = CurrentDirectory.Length > 0 ? CurrentDirectory : Folder,
        IsOutputRedirected = true,
        Randomness = _randomness,
    };

    public void Set(string variable, string value) => _environment[variable] = value;

    public int Run(params string[] args)
    {
        Output = new StringWriter { NewLine = "\n" };
        Error = new StringWriter { NewLine = "\n" };

        return Commands is null ? App.Run(args, Output, Error, Services) : App.Run(args, Output, Error, Services, Commands);
    }

    /// <summary>Runs a line as it is typed, beginning with "edreg"; says on stdout, stderr and by a number what came of it.</summary>
    public string Typed(string line, params string[] more)
    {
        // A story goes on to a later day; nothing is said.
        if (line.StartsWith(NextDay, StringComparison.Ordinal))
        {
            Time.SetUtcNow(new DateTimeOffset(DateOnly.Parse(line[NextDay.Length..], CultureInfo.InvariantCulture), new TimeOnly(10, 0), TimeSpan.Zero));

            return "";
        }

        var code = Run([.. CommandLineParser.SplitCommandLine(line).Skip(1), .. more]);

        return $"{Output}{Error}{(code == 0 ? "" : FormattableString.Invariant($"[{code}]\n"))}".Replace(Folder, "/home/mira", StringComparison.Ordinal);
    }

    /// <summary>A folder below <see cref="Folder"/> that counts as a register.</summary>
    public string MakeRegister(string name)
    {
        var folder = Directory.CreateDirectory(Path.Combine(Folder, name)).FullName;
        File.WriteAllText(Path.Combine(folder, RegisterFinder.FileName), "");

        return folder;
    }

    /// <summary>Lets the command "try" do what a test wants done.</summary>
    public void Bring(Func<CommandContext, ParseResult, int> deed) => Commands =
    [
        context =>
        {
            CommandWithExample command = new("try", "Does what the test says.", "edreg try");
            command.SetAction(line => deed(context, line));

            return command;
        },
    ];

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
