namespace EditionRegister.Cli;

/// <summary>Tells "nobody reads any more" from other failures to write.</summary>
internal static class BrokenPipe
{
    private const int Epipe = 32;                                            // errno, Linux and macOS
    private const int BrokenPipeOnWindows = unchecked((int)0x8007006D);      // ERROR_BROKEN_PIPE
    private const int NoDataOnWindows = unchecked((int)0x800700E8);          // ERROR_NO_DATA

    public static bool Is(IOException exception) =>
        exception.HResult is Epipe or BrokenPipeOnWindows or NoDataOnWindows;
}
