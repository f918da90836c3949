using System.Text;

namespace EditionRegister.Formats.Csv;

/// <summary>Whether text can be written as UTF-8 without loss.</summary>
internal static class Unicode
{
    public static bool IsWellFormed(ReadOnlySpan<char> text)
    {
        while (!text.IsEmpty)
        {
            if (Rune.DecodeFromUtf16(text, out _, out var used) != System.Buffers.OperationStatus.Done)
            {
                return false;
            }

            text = text[used..];
        }

        return true;
    }
}
