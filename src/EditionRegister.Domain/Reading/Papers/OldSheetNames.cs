using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>
/// Old names of sheets. None fixes a size: imperial was 29 x 21 1/4 (Scribner 1849), 22 x 32 (Scientific American 1854), 29 x 22 1/2
/// (Paper and Its Uses) and is 22 x 30 inches in schools of art; royal and double elephant differ as much.
/// </summary>
internal static class OldSheetNames
{
    /// <summary>The first in a text, with the words that belong to it, as written; null where there is none.</summary>
    public static string? In(string name)
    {
        TokenText text = new(name);

        for (var at = 0; at < text.Count; at++)
        {
            if (text.Word(at) is "imperial" or "royal" or "elephant" or "antiquarian" or "demy" or "foolscap" or "columbier" or "colombier" or "emperor" or "crown")
            {
                var start = at > 0 && text.Word(at - 1) is "double" or "super" or "half" or "quarter" or "grand" or "full" or "small" or "large" ? at - 1 : at;

                return name[text[start].Start..text[at].End];
            }
        }

        return null;
    }
}
