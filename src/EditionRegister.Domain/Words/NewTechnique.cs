using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Words;

/// <summary>A technique that a register adds to the list for itself; from then on it is read in words by its name.</summary>
/// <param name="Word">What the register calls it, for ever.</param>
/// <param name="Name">As it is said and written.</param>
/// <param name="Aat">Its id in the Getty Art &amp; Architecture Thesaurus, where somebody looked it up; else null.</param>
public sealed record NewTechnique(string Word, string Name, string? Aat)
{
    private const int LongestId = 12;

    /// <exception cref="RefusedException">word-not-kebab, word-known-already, word-name-missing or technique-id-unfit.</exception>
    public long Record(OwnWords own, Deed deed)
    {
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(deed);
        OwnWordRules.Free("technique", Word, own.TechniqueOf(Word)?.Name);
        OwnWordRules.Named(Name);

        if (Aat is { } aat && (aat.Length is 0 or > LongestId || !aat.All(char.IsAsciiDigit)))
        {
            throw WordRefusals.NoThesaurusId(aat);
        }

        var id = deed.NewId("technique");
        deed.Set("technique", id, ("word", Word), ("name", Name.Trim()), ("aat", Aat));

        return id;
    }
}
