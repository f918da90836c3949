namespace EditionRegister.Cli;

/// <summary>Tells the two failures to write that are nobody's mistake: no one reads any more, and no space is left.</summary>
internal static class WriteFailure
{
    public const string NoSpace = "Not everything was written: no space is left on the disk. Make room and do it again.";

    // errno of Linux and macOS; on Windows ERROR_BROKEN_PIPE, ERROR_NO_DATA and ERROR_DISK_FULL as HRESULTs.
    public static bool IsBrokenPipe(IOException exception) =>
        exception.HResult is 32 or unchecked((int)0x8007006D) or unchecked((int)0x800700E8);

    public static bool IsNoSpace(IOException exception) =>
        exception.HResult is 28 or unchecked((int)0x80070070);
}
