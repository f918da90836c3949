using System.CommandLine;
using System.Globalization;

namespace EditionRegister.Cli;

/// <summary><c>--as-of</c>: a day that is past, to look at the register as it stood when it ended.</summary>
internal static class AsOfOption
{
    public static Option<DateOnly?> Create() => new("--as-of")
    {
        HelpName = "DATE",
        Description = "As the register stood at the end of this day, and beside it what is known now of that day. Else as it stands.",
        CustomParser = Given.One<DateOnly?>(TryRead, "one day, such as 2026-03-31"),
    };

    private static bool TryRead(string text, out DateOnly? day)
    {
        var read = DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var found);
        day = read ? found : null;

        return read;
    }
}
