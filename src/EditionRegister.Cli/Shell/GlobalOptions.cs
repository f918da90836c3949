using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace EditionRegister.Cli;

/// <summary>The options that every command takes.</summary>
internal sealed class GlobalOptions
{
    public Option<string?> Register { get; } = new("--register")
    {
        HelpName = "DIR",
        Description = "The register's folder. Else EDREG_REGISTER, else the current folder or one above it.",
        Recursive = true,
    };

    public Option<bool> Json { get; } = new("--json")
    {
        Description = "Prints the result for machines: one JSON document, format edreg/1.",
        Recursive = true,
    };

    /// <summary>A person's number as typed: whole and above nothing.</summary>
    public Option<string?> By { get; } = new("--by")
    {
        HelpName = "PERSON",
        Description = "The number of the person who does this. Else the one register.toml names.",
        Recursive = true,
        CustomParser = PersonNumber,
    };

    public IReadOnlyList<Option> All => [Register, Json, By];

    private static string? PersonNumber(ArgumentResult given)
    {
        var typed = given.Tokens[0].Value;

        if (long.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var id) && id > 0)
        {
            return typed;
        }

        given.AddError($"--by takes a person's number, such as 2, and “{typed}” is none.");

        return null;
    }
}
