using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>One reading of one text, from its first token to its last; which tokens were understood is remembered, and the rest is left.</summary>
internal sealed class TechniqueScan(TechniqueText text)
{
    private readonly TokenText _tokens = text.Tokens;
    private readonly bool[] _read = new bool[text.Tokens.Count];
    private readonly TechniquesMet _met = new();
    private int? _colours;
    private bool _inColour;
    private MatrixCount? _matrices;
    private (int From, int To)? _support;

    public TechniqueRead Read()
    {
        for (var at = 0; at < _tokens.Count;)
        {
            at = _tokens.IsWord(at) || _tokens.IsDigits(at) ? Step(at) : at + 1;
        }

        var techniques = _met.Settled(_tokens, _read);
        _support ??= techniques.Count > 0 ? LastSegment() : null;

        return new TechniqueRead(techniques, _colours, _inColour && techniques.Count > 0, _matrices, _support is { } support ? Written(support).ToString() : null, LeftPhrases.Of(_tokens, _read));
    }

    /// <summary>Reads what begins at a token, and answers the token to go on from.</summary>
    private int Step(int at) =>
        Negations.At(_tokens, at, text.At) ?? Support(at) ?? Technique(at) ?? Matrices(at) ?? Colours(at) ?? at + 1;

    private int? Technique(int at)
    {
        if (text.At(at) is { } met)
        {
            return met.Writing.Technique is null || NotPrints.SaysAThing(_tokens, met) ? met.Next : Take(met);
        }

        if (text.InOneWord(at) is { } word)
        {
            _colours ??= word.Colours;
            _inColour |= word.Colours is null && !ColourWords.SaysColour(word.Met.Writing.Technique!);

            return Take(word.Met);
        }

        return text.Elliptic(at) is { } elliptic ? Take(elliptic) : null;
    }

    private int Take(Met met)
    {
        _met.Add(met);

        return Mark(met.Start, met.Next);
    }

    private int? Matrices(int at)
    {
        if (_tokens.IsSign(at - 1, '/') || MatrixWords.At(_tokens, at, _met.LastIsOne(_tokens)) is not { } said)
        {
            return null;
        }

        _matrices ??= said.Count;

        return Mark(at, said.Next);
    }

    private int? Colours(int at)
    {
        if (ColourWords.Counted(_tokens, at) is { } said && !CountsSheets(said.Next))
        {
            _colours ??= said.Count;

            return Mark(at, said.Next);
        }

        return SaysColour(at) ? InColour(at) : null;
    }

    // "Eight color screenprints" are eight sheets, "eight-color screenprint" has eight colours.
    private bool CountsSheets(int next) =>
        !_tokens.IsSign(next - 2, '-') && ColourWords.IsSingular(_tokens.Word(next - 1))
        && text.At(next) is { } met && _tokens.Word(met.Next - 1) is [.., 's'] && met.Writing.Words[^1] is not [.., 's'];

    private bool SaysColour(int at)
    {
        var word = _tokens.Word(at);
        var isLedIn = ColourWords.LeadsIn(_tokens.Word(at - 1)) || (_tokens.IsSign(at - 1, '-') && ColourWords.LeadsIn(_tokens.Word(at - 2)));
        var standsAlone = !_tokens.IsWord(at - 1) && !_tokens.IsWord(at + 1);

        return ColourWords.IsPlural(word) ? isLedIn || !_tokens.IsWord(at - 1)
            : ColourWords.IsNoun(word) ? isLedIn
            : ColourWords.IsSingular(word) && (isLedIn || text.IsTechnique(AfterBracket(at + 1)) || (standsAlone && _met.StandsJustBefore(_tokens, at)));
    }

    private int AfterBracket(int at) => _tokens.IsSign(at, '(') ? at + 1 : at;

    private int InColour(int at)
    {
        var isTwoWords = _tokens.Word(at - 1) is "full" || (_tokens.IsSign(at - 1, '-') && _tokens.IsWord(at - 2, "multi"));
        Mark(isTwoWords ? Math.Max(0, at - 2) : at, at + 1);

        if (text.At(AfterBracket(at + 1)) is { Writing.Technique: { } next } met && !NotPrints.SaysAThing(_tokens, met))
        {
            var printed = ColourWords.Variant(next) ?? next;
            _inColour |= !ColourWords.SaysColour(printed);

            return Take(met with { Writing = met.Writing with { Technique = printed } });
        }

        _inColour |= !_met.TurnLastToColour(_tokens, at) && !_met.LastSaysColour;

        return at + 1;
    }

    private int? Support(int at)
    {
        var start = SupportWords.IsHeading(_tokens, at) ? at + 2 : SupportWords.IsPreposition(_tokens.Word(at)) ? at + 1 : 0;

        if (start == 0 || start >= _tokens.Count || SupportWords.IsMounting(_tokens.Word(at - 1)) || MatrixWords.At(_tokens, start) is not null)
        {
            return null;
        }

        return text.IsPrintItself(start) || IsPlate(start) ? start : Take(at, SupportPhrase.From(text, start));
    }

    /// <summary>"Etching on copper" is printed from it, "on copperplate paper" is printed on it.</summary>
    private bool IsPlate(int start) =>
        SupportWords.IsMetal(_tokens.Word(start)) && _met.LastIsFromPlates && !SupportWords.MaterialFollows(_tokens, start + 1);

    // Said again it says nothing new; another one is left as written.
    private int Take(int at, SupportPhrase phrase)
    {
        if (phrase.ChineColle is { } chineColle)
        {
            _met.Add(chineColle);
        }

        if (phrase.Trimmed > phrase.Start && (_support is not { } before || Written(before).SequenceEqual(Written((phrase.Start, phrase.Trimmed)))))
        {
            _support ??= (phrase.Start, phrase.Trimmed);
            Mark(at, phrase.Trimmed);
        }

        return Math.Max(phrase.End, phrase.Start);
    }

    /// <summary>"Digital prints, watercolor paper": the last phrase ends in a paper, and nothing says "on".</summary>
    private (int From, int To)? LastSegment()
    {
        var end = _tokens.Count;

        while (end > 0 && !_tokens.IsWord(end - 1))
        {
            end--;
        }

        var from = end;

        while (from > 0 && !_read[from - 1] && (_tokens.IsWord(from - 1) || _tokens.IsSign(from - 1, '-')))
        {
            from--;
        }

        if (from == end || !_tokens.IsAnySign(from - 1, ",;|") || !SupportWords.IsMaterial(_tokens.Word(end - 1)))
        {
            return null;
        }

        Mark(from, end);

        return (from, end);
    }

    private int Mark(int from, int to)
    {
        Array.Fill(_read, true, from, to - from);

        return to;
    }

    private ReadOnlySpan<char> Written((int From, int To) span) => _tokens.Text.AsSpan(_tokens[span.From].Start.._tokens[span.To - 1].End);
}
