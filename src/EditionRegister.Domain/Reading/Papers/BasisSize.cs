using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>
/// A grade of paper whose name fixes the sheet that its pounds are counted for. Printers' tables have them: bond 17 x 22, cover 20 x 26,
/// text, offset and book 25 x 38 inches (published factors: printwiki.org, Grammage; azmanual, p. A-2; timesprinters).
/// </summary>
public sealed record BasisSize
{
    private const long Inch = 25_400;

    private BasisSize(string word, int height, int width) => (Word, Size) = (word, new Size(new Length(height * Inch), new Length(width * Inch)));

    public static IReadOnlyList<BasisSize> All { get; } =
        [new("bond", 17, 22), new("cover", 20, 26), new("text", 25, 38), new("offset", 25, 38), new("book", 25, 38)];

    public string Word { get; }

    public Size Size { get; }

    public static BasisSize? Of(ReadOnlySpan<char> word)
    {
        foreach (var one in All)
        {
            if (word.SequenceEqual(one.Word))
            {
                return one;
            }
        }

        return null;
    }
}
