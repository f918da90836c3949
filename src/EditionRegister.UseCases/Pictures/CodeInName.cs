using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Pictures;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.Pictures;

/// <summary>Finds the sheet or the block a picture is of by a register code in the name of its file, wherever it stands in it.</summary>
internal static class CodeInName
{
    /// <summary>Null where the name has no code of this register, or codes of several things.</summary>
    public static (long Work, PictureSubject Subject)? Find(Reader reader, string path)
    {
        var found = Codes(Path.GetFileName(path)).Distinct(StringComparer.Ordinal).Select(code => Of(reader, code)).OfType<(long, PictureSubject)>().Distinct().Take(2).ToList();

        return found is [var one] ? one : null;
    }

    private static (long Work, PictureSubject Subject)? Of(Reader reader, string code) =>
        reader.FindCode(code) is { } sheet ? (sheet.Work, new PictureSubject(Impression: sheet.Impression))
        : reader.FindMatrixCode(code) is { } matrix ? (matrix.Work, new PictureSubject(Matrix: matrix.Matrix))
        : null;

    /// <summary>Every eight letters and figures in a row, and every four with a dash and four, that answer for themselves.</summary>
    private static IEnumerable<string> Codes(string name)
    {
        for (var at = 0; at + 8 <= name.Length; at++)
        {
            foreach (var length in new[] { 8, 9 })
            {
                if (at + length <= name.Length && (length == 8 || name[at + 4] == '-') && name.AsSpan(at, length).IndexOfAny(" .") < 0
                    && RegisterCode.TryParse(name.Substring(at, length), out var code))
                {
                    yield return code.Text;
                }
            }
        }
    }
}
