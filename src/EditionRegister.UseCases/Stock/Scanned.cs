using EditionRegister.Domain.Stock;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Stock;

/// <summary>Finds what scanned codes stand on.</summary>
internal static class Scanned
{
    /// <exception cref="Domain.RefusedException">scan-misread, with every line that is.</exception>
    public static IReadOnlyList<(string Code, StockThing? Thing)> Find(Reader reader, ScanList scans) =>
        scans.Misread.Count > 0 ? throw StockRefusals.Misread(scans.Misread) : [.. scans.Codes.Select(code => (code.Text, reader.StockOf(code.Text)))];
}
