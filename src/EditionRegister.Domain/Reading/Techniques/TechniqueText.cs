using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>A text and what is written of techniques at each of its tokens: the register's own before the list's, the longer before both.</summary>
internal sealed class TechniqueText(TokenText tokens, TechniqueTable? own)
{
    public TokenText Tokens => tokens;

    public Met? At(int at) => (own?.At(tokens, at), TechniqueTable.Shipped.At(tokens, at)) switch
    {
        ({ } ours, { } listed) => listed.Next > ours.Next ? listed : ours,
        var (ours, listed) => ours ?? listed,
    };

    public bool IsTechnique(int at) => At(at) is { Writing.Technique: not null };

    /// <summary>"Line and stipple engraving", "hard and soft ground etching": the first word lacks what the second has.</summary>
    public Met? Elliptic(int at)
    {
        var joins = tokens.Word(at + 1) is "and" or "und" or "et" or "e" or "y" || tokens.IsSign(at + 1, '&');

        return joins && At(at + 2) is { } after && TechniqueTable.Shipped.Elliptic(tokens, at, after.Writing) is { Technique: not null } writing
            ? new Met(writing, at, at + 1)
            : null;
    }

    /// <summary>"Farblinolschnitt", "Dreifarbenholzschnitt": the technique in colour, and the count if the word says one.</summary>
    public (Met Met, int? Colours)? InOneWord(int at)
    {
        if (ColourWords.Within(tokens.Word(at)) is not { } colour || TechniqueTable.Shipped.OfWord(tokens.Word(at)[colour.From..]) is not { } technique)
        {
            return null;
        }

        var printed = colour.Count is null ? ColourWords.Variant(technique) ?? technique : technique;

        return (new Met(new Writing([tokens.Word(at).ToString()], printed, NeedsCompany: false), at, at + 1), colour.Count);
    }

    /// <summary>"Chalk on etching": the sheet under it is a print; "on etching paper" is a paper.</summary>
    public bool IsPrintItself(int start) =>
        At(start) is { Writing.Technique: { } technique } met && technique.Word != "chine-colle" && !SupportWords.MaterialFollows(tokens, met.Next);
}
