using CsCheck;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Tests.Reading;

public sealed class TechniqueReaderPropertyTests
{
    private static readonly Gen<string> Anything = Gen.Char[char.MinValue, char.MaxValue].Array[0, 200].Select(letters => new string(letters));

    private static readonly string[] Words =
    [
        "etching", "aquatints", "print", "after", "an", "on", "paper", "in", "4", "two", "-", "color", "colours", "from", "blocks", "reduction", "linocut", "chine", "collé", "hand", "colored", "engraved", "glass", ",", ";", "(", ")", "?", ".", "/", "'",
        "and", "line", "stipple", "engraving", "photograph", "support", ":", "d'après", "une", "vierfarbig", "auf", "\0", "\uD800", "e\u0301", "İ", "⏎",
    ];

    private static readonly Gen<string> Wordy = Gen.Int[0, Words.Length - 1].Array[0, 40].Select(places => string.Join(' ', places.Select(place => Words[place])));

    [Fact]
    public void No_text_is_refused()
    {
        Gen.OneOf(Anything, Wordy).Sample(text => TechniqueReader.Read(text).InWords().Length > 0, iter: 20_000);
    }

    [Fact]
    public void No_text_of_64_KB_is_refused()
    {
        Gen.Char[char.MinValue, char.MaxValue].Array[65_536].Sample(letters => TechniqueReader.Read(new string(letters)).Techniques.Count < 100, iter: 20);
        Wordy.Where(text => text.Length > 10).Sample(text => TechniqueReader.Read(string.Concat(Enumerable.Repeat(text + " ", 65_536 / text.Length))).Techniques.Count < 100, iter: 20);
    }

    [Fact]
    public void What_is_left_and_the_support_stand_in_the_text_as_written_and_in_their_order()
    {
        Gen.OneOf(Anything, Wordy).Sample(
            text =>
            {
                var read = TechniqueReader.Read(text);
                var from = 0;

                foreach (var phrase in read.Left)
                {
                    from = text.IndexOf(phrase, from, StringComparison.Ordinal);
                    Assert.True(from >= 0 && phrase.Length > 0);
                    from += phrase.Length;
                }

                Assert.True(read.Support is null || text.Contains(read.Support, StringComparison.Ordinal));
                Assert.Equal(read.Techniques.Count, read.Techniques.Distinct().Count());
            },
            iter: 20_000);
    }
}
