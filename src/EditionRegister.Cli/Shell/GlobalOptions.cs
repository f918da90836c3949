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

    public Option<long?> By { get; } = new("--by")
    {
        HelpName = "PERSON",
        Description = "The number of the person who does this. Else the one register.toml names.",
        Recursive = true,
        CustomParser = PersonNumber,
    };

    public IReadOnlyList<Option> All => [Register, Json, By];

    private static long? PersonNumber(ArgumentResult given)
    {
        if (long.TryParse(given.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var id) && id > 0)
        {
            return id;
        }

        given.AddError($"--by takes a person's number, such as 2, and “{given.Tokens[0].Value}” is none.");

        return null;
    }
}
