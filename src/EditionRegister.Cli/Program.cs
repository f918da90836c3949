using System.Globalization;
using System.Text;

namespace EditionRegister.Cli;

/// <summary>Joins <see cref="App"/> to the console of this process.</summary>
internal static class Program
{
    public static int Main(string[] args)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;

        if (OperatingSystem.IsWindows())
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }

        // Console.Out flushes every line, which makes a list of a million sheets slow.
        using var output = Writer(Console.OpenStandardOutput(), autoFlush: false);
        using var error = Writer(Console.OpenStandardError(), autoFlush: true);

        return App.Run(args, output, error, AppServices.OfThisProcess());
    }

    private static StreamWriter Writer(Stream stream, bool autoFlush) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = autoFlush, NewLine = "\n" };
}
