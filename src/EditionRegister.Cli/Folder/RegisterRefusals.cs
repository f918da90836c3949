using EditionRegister.Domain;

namespace EditionRegister.Cli;

/// <summary>Every way in which a command can fail to find a register.</summary>
internal static class RegisterRefusals
{
    private const string NotFound = "register-not-found";
    private const string WayOut = "Make one with “edreg new DIR”, or see the demo with “edreg demo”.";

    public static RefusedException NotFoundWhereNamed(string folder, string by) => new(
        NotFound,
        $"No register was opened: {by} names {folder}, which holds no {RegisterFinder.FileName}. {WayOut}");

    public static RefusedException NoName(string by) => new(
        NotFound,
        $"No register was opened: {by} is given without the name of a folder. {WayOut}");

    public static RefusedException NotFoundUpwards(string folder) => new(
        NotFound,
        $"No register was opened: neither --register nor {RegisterFinder.Variable} names one, and neither {folder} nor a folder above it holds a {RegisterFinder.FileName}. {WayOut}");

    public static RefusedException CannotMake(string folder, string why) => new(
        "register-not-made",
        $"No register was made: {folder} cannot be written ({why.TrimEnd('.')}). Name a folder of your own.");
}
