using System.Globalization;
using EditionRegister.Domain.Documents;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>Number and head of the logbook as printed: the hex in groups of eight, so that it can be read out and typed.</summary>
internal static class LogbookLine
{
    public static string Of(LogbookHead head) =>
        $"Logbook entry {head.N.ToString(CultureInfo.InvariantCulture)}, head {string.Join(' ', head.Head.Chunk(8).Select(eight => new string(eight)))}";
}
