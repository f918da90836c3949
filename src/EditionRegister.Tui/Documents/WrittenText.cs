using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>Where files are, in full: each path begins its line and nothing stands behind it, so that it can be copied.</summary>
internal static class WrittenText
{
    public static IEnumerable<Line> Of(Written written, int width) =>
    [
        .. Wrap.Of(written.Sentence, width).Select(line => Line.Of(line, Tone.Good)),
        Line.Empty,
        Line.Of(written.Files.Count == 1 ? "The file:" : "The files:", Tone.Quiet),
        .. Paths(written.Files, width),
        .. written.Mind is { } mind ? [Line.Empty, .. Wrap.Of(mind, width).Select(line => (Line)line)] : (Line[])[],
    ];

    public static IEnumerable<Line> Paths(IEnumerable<string> files, int width) => files.SelectMany(file => Wrap.Of(file, width)).Select(line => Line.Of(line, Tone.Strong));
}
