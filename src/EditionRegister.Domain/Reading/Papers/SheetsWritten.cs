using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds the sheet in figures: 56 x 76 cm, 22 x 30 in. (56 x 76 cm), sheets of 22 x 30 in.</summary>
internal static class SheetsWritten
{
    /// <summary>Height and width joined by ×, in one system or two; what is wrong with it stands in its fault.</summary>
    public static SizePair? At(TokenText text, int at)
    {
        if (!IsStart(text, at) || Group.At(text, at) is not { Count: 2 } group || !IsJoined(text, group))
        {
            return null;
        }

        var next = text.IsSign(group.Next, '.') ? group.Next + 1 : group.Next;
        var pair = text.IsAnySign(next, "([/=") ? SizePair.Of(text, group) : SizePair.Alone(group, group.Next);

        return pair.Second is null or { Fault: SizeFault.None } && (pair.Second is null || IsJoined(text, pair.Second)) ? pair : SizePair.Alone(group, group.Next);
    }

    /// <summary>The first token of the words that announce it: sheet size: 56 x 76 cm.</summary>
    public static int StartOf(TokenText text, int at)
    {
        var word = text.IsAnySign(at - 1, ":=") || text.IsWord(at - 1, "of") ? at - 2 : at - 1;

        if (!IsAnnouncing(text.Word(word)))
        {
            return at;
        }

        return IsAnnouncing(text.Word(word - 1)) ? word - 1 : word;
    }

    private static bool IsAnnouncing(ReadOnlySpan<char> word) =>
        word is "sheet" or "sheets" or "size" or "format" or "bogen" or "bogenformat" or "blatt" or "feuille" or "feuilles" or "foglio" or "fogli" or "formato" or "hoja" or "hojas";

    private static bool IsStart(TokenText text, int at) => text.IsDigits(at) ? at == 0 || text.IsApart(at) || text.IsAnySign(at - 1, ":=") || (text.IsSign(at - 1, '/') && !text.IsDigits(at - 2)) || PaperRest.Separates(text, at - 1) : text.Written(at) is [> '\u007F'];

    // H. 56 cm; W. 76 cm is left to be written with ×.
    public static bool IsJoined(TokenText text, Group group)
    {
        for (var at = group.Start; at < group.Next; at++)
        {
            if (text.IsSign(at, ';') || (at > group.Start && Breaks.IsNewLine(text, at)) || (text.IsSign(at, ',') && text.IsApart(at + 1)))
            {
                return false;
            }
        }

        return true;
    }
}
