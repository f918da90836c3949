using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>Common practice, no source: the size of the edition first, proofs by their mark after it.</summary>
public sealed class NumberingsInShortTests
{
    [Theory]
    [InlineData("12", "numbered arabic 12 stated")]
    [InlineData("12 + 2 A/P", "numbered arabic 12 stated", "artists-proof roman 2 stated")]
    [InlineData("40 + I–X", "numbered arabic 40 stated", "numbered roman 10 stated")]
    [InlineData("A–F", "numbered letters 6 stated")]
    [InlineData("B.A.T.", "bon-a-tirer none 1 stated")]
    [InlineData("open + ? A/P", "numbered arabic 0 open", "artists-proof arabic 0 unknown")]
    [InlineData("? + 1 state proof + 3 workshop proofs", "numbered arabic 0 unknown", "state arabic 1 stated", "workshop arabic 3 stated")]
    [InlineData("3 strange", "strange odd 3 stated")]
    [InlineData("4000", "numbered roman 4000 stated")]
    public void Says_how_many_of_each_kind(string said, params string[] numberings)
    {
        Edition edition = new(1, 1, 1, "limited", "whole", null, RecordedDate.None, "no", RecordedDate.None, null, [.. numberings.Select(Read)]);

        Assert.Equal(said, NumberingsInShort.Of(edition));
    }

    private static Numbering Read(string words) => words.Split(' ') is [var kind, var notation, var size, var state]
        ? new Numbering(1, 1, 1, kind, notation, size == "0" ? null : int.Parse(size, System.Globalization.CultureInfo.InvariantCulture), state, [])
        : throw new ArgumentException(words);
}
