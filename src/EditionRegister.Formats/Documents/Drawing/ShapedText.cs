namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>A line shaped into glyphs; every length in ems.</summary>
internal sealed record ShapedText(IReadOnlyList<ShapedRun> Runs, double Width);

/// <summary>Glyphs of one font with their places from the line's start, and for each the byte of the text it stands for.</summary>
internal sealed record ShapedRun(ShelfFont Font, byte[] Utf8, ushort[] Glyphs, uint[] Clusters, double[] X, double[] Y);
