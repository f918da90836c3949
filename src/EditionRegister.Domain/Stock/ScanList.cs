using System.Globalization;
using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Stock;

/// <summary>Codes that were scanned one after the other, each counted once.</summary>
/// <param name="Codes">In the order in which they were scanned first.</param>
/// <param name="Repeated">Those scanned again, by where that was: line 4.</param>
/// <param name="Misread">Those that are no code, by where that was.</param>
public sealed record ScanList(IReadOnlyList<RegisterCode> Codes, IReadOnlyList<ScanAt> Repeated, IReadOnlyList<ScanAt> Misread)
{
    /// <summary>A text file: one code in each line; empty lines, and those that begin with #, are passed over.</summary>
    public static ScanList OfLines(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        return Of(text.ReplaceLineEndings("\n").Split('\n').Select((line, at) => new ScanAt($"line {Figure(at + 1)}", ScannedCode.Read(line))));
    }

    /// <summary>Codes in one line, parted by commas or semicolons.</summary>
    public static ScanList OfTyped(string text)
    {
        ArgumentNullException.ThrowIfNull(text);

        return Of(text.Split(',', ';', '\n').Select((part, at) => new ScanAt($"code {Figure(at + 1)}", ScannedCode.Read(part))));
    }

    private static ScanList Of(IEnumerable<ScanAt> scans)
    {
        OrderedDictionary<string, RegisterCode> codes = new(StringComparer.Ordinal);
        List<ScanAt> repeated = [];
        List<ScanAt> misread = [];

        foreach (var scan in scans.Where(scan => scan.Read.Text.Length > 0 && scan.Read.Text[0] != '#'))
        {
            if (scan.Read.Code is not { } code)
            {
                misread.Add(scan);
            }
            else if (!codes.TryAdd(code.Text, code))
            {
                repeated.Add(scan);
            }
        }

        return new ScanList([.. codes.Values], repeated, misread);
    }

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What was read, and where in a file or a line of codes.</summary>
public sealed record ScanAt(string Where, ScannedCode Read);
