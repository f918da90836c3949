using EditionRegister.Domain;

namespace EditionRegister.Cli;

/// <summary>What the program tells the shell when it ends. Permanent: scripts rely on it.</summary>
internal static class ExitCode
{
    /// <summary>Done; findings that are queries or notes included.</summary>
    public const int Done = 0;

    /// <summary>Refused, or contradictions found.</summary>
    public const int Refused = 1;

    /// <summary>The command line is not one of ours.</summary>
    public const int Usage = 2;

    /// <summary>The register cannot be opened: not there, not readable, or newer than the program.</summary>
    public const int CannotOpen = 3;

    /// <summary>Our own mistake; 70 is EX_SOFTWARE of BSD's sysexits.h.</summary>
    public const int Bug = 70;

    /// <summary>Stopped by the user: 128 + SIGINT, as shells count.</summary>
    public const int Stopped = 130;

    private static readonly string[] MeansCannotOpen = ["register-cannot-open", "register-newer", "register-not-found"];

    public static int Of(RefusedException refusal) =>
        MeansCannotOpen.Any(start => refusal.Name.StartsWith(start, StringComparison.Ordinal)) ? CannotOpen : Refused;
}
