using EditionRegister.Store;

namespace EditionRegister.Cli;

/// <summary>What the program takes from the machine it runs on, and what a test gives it instead.</summary>
internal sealed record AppServices
{
    public required TimeProvider Time { get; init; }

    /// <summary>An environment variable's value, or null where it is not set.</summary>
    public required Func<string, string?> Environment { get; init; }

    public required string CurrentDirectory { get; init; }

    /// <summary>True where nobody watches: output goes to a file or another program.</summary>
    public required bool IsOutputRedirected { get; init; }

    /// <summary>True where nobody types: input comes from a file or another program.</summary>
    public bool IsInputRedirected { get; init; } = true;

    /// <summary>Where codes and salts come from.</summary>
    public Randomness Randomness { get; init; } = Randomness.System;

    public static AppServices OfThisProcess() => new()
    {
        Time = TimeProvider.System,
        Environment = System.Environment.GetEnvironmentVariable,
        CurrentDirectory = System.Environment.CurrentDirectory,
        IsOutputRedirected = Console.IsOutputRedirected,
        IsInputRedirected = Console.IsInputRedirected,
    };
}
