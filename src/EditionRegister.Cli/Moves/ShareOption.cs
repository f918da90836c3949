using System.CommandLine;
using System.Globalization;

namespace EditionRegister.Cli;

/// <summary>A share in per cent, read into hundredths of a per cent.</summary>
internal static class ShareOption
{
    private const string Form = "a share in per cent from 0 to 100, such as 40 or 33.33";
    private const decimal Hundredths = 100m;

    public static Option<int?> Create(string name, string description) =>
        new(name) { HelpName = "PERCENT", Description = description, CustomParser = Given.One<int?>(TryRead, Form) };

    private static bool TryRead(string text, out int? share)
    {
        share = decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)
            && percent <= 100
            && decimal.IsInteger(percent * Hundredths)
                ? (int)(percent * Hundredths)
                : null;

        return share is not null;
    }
}
