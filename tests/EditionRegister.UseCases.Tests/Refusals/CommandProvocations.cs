using System.Text.Json;
using EditionRegister.Cli;
using EditionRegister.Domain;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>What only the program refuses: it looks for a register, makes one, and shows the logbook.</summary>
internal static class CommandProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("register-not-found", studio => Type(studio, "list", "--register", "nowhere")),
        new("register-not-found", studio => Type(studio, "list", "--register", "")),
        new("register-not-found", studio => Type(studio, "list")),
        new("register-not-made", studio => Type(studio, "new", Path.Combine(studio.Write("letter.txt", "A file, and no folder."), "register"))),
        new("entry-not-found", studio => Type(studio, "log", "9999", "--register", "register")),
    ];

    private static void Type(Studio studio, params string[] words)
    {
        using StringWriter output = new();
        App.Run([.. words, "--json"], output, TextWriter.Null, new AppServices
        {
            Time = TimeProvider.System,
            Environment = _ => null,
            CurrentDirectory = studio.In(),
            IsOutputRedirected = true,
        });

        if (JsonDocument.Parse(output.ToString()).RootElement.TryGetProperty("refused", out var refused))
        {
            throw new RefusedException(refused.GetProperty("name").GetString()!, refused.GetProperty("message").GetString()!);
        }
    }
}
