using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>One reading of one text, from its first token to its last; which tokens were understood is remembered, and the rest is left.</summary>
internal sealed class TechniqueScan(TokenText text, TechniqueTable? own)
{
    private readonly bool[] _read = new bool[text.Count];
    private readonly TechniquesMet _met = new();
    private int? _colours;
    private bool _inColour;
    private MatrixCount? _matrices;
    private (int From, int To)? _support;

    public TechniqueRead Read()
    {
        for (var at = 0; at < text.Count;)
        {
            at = text.IsWord(at) || text.IsDigits(at) ? Step(at) : at + 1;
        }

        var techniques = _met.Settled(text, _read);
        _support ??= techniques.Count > 0 ? LastSegment() : null;

        return new TechniqueRead(techniques, _colours, _inColour && techniques.Count > 0, _matrices, Written(_support), LeftPhrases.Of(text, _read));
    }

    private int Step(int at) =>
        Negations.At(text, at, At) ?? Support(at) ?? Technique(at) ?? Matrices(at) ?? Colours(at) ?? at + 1;

    private Met? At(int at) => (own?.At(text, at), TechniqueTable.Shipped.At(text, at)) switch
    {
        ({ } ours, { } listed) => listed.Next > ours.Next ? listed : ours,
        var (ours, listed) => ours ?? listed,
    };

    private int? Technique(int at)
    {
        if (At(at) is not { } met)
        {
            return Elliptic(at) ?? WithColourInOneWord(at);
        }

        if (met.Writing.Technique is null || NotPrints.SaysAThing(text, met))
        {
            return met.Next;
        }

        Take(met);

        return met.Next;
    }

    private void Take(Met met)
    {
        _met.Add(met);
        Mark(met.Start, met.Next);
    }

    // "Line and stipple engraving", "hard and soft ground etching".
    private int? Elliptic(int at)
    {
        if (!(text.Word(at + 1) is "and" or "und" or "et" or "e" or "y" || text.IsSign(at + 1, '&')) || At(at + 2) is not { } after || TechniqueTable.Shipped.Elliptic(text, at, after.Writing) is not { Technique: not null } writing)
        {
            return null;
        }

        Take(new Met(writing, at, at + 1));

        return at + 1;
    }

    // "Farblinolschnitt", "Dreifarbenholzschnitt".
    private int? WithColourInOneWord(int at)
    {
        if (ColourWords.Within(text.Word(at)) is not { } colour || TechniqueTable.Shipped.OfWord(text.Word(at)[colour.From..]) is not { } technique)
        {
            return null;
        }

        var printed = colour.Count is null ? ColourWords.Variant(technique) ?? technique : technique;
        Take(new Met(new Writing([text.Word(at).ToString()], printed, NeedsCompany: false), at, at + 1));
        _colours ??= colour.Count;
        _inColour |= colour.Count is null && !ColourWords.SaysColour(printed);

        return at + 1;
    }

    private int? Matrices(int at)
    {
        if (text.IsSign(at - 1, '/') || MatrixWords.At(text, at) is not { } said)
        {
            return null;
        }

        _matrices ??= said.Count;
        Mark(at, said.Next);

        return said.Next;
    }

    private int? Colours(int at)
    {
        if (ColourWords.Counted(text, at) is { } said && !CountsSheets(at, said.Next))
        {
            Mark(at, said.Next);
            _colours ??= said.Count;

            return said.Next;
        }

        return SaysColour(at) ? InColour(at) : null;
    }

    // "Eight color screenprints" are eight sheets, "eight-color screenprint" has eight colours.
    private bool CountsSheets(int at, int next) =>
        !text.IsSign(next - 2, '-') && ColourWords.IsSingular(text.Word(next - 1)) && At(next) is { } met && text.Word(met.Next - 1) is [.., 's'] && met.Writing.Words[^1] is not [.., 's'] && at < next;

    private bool SaysColour(int at)
    {
        var word = text.Word(at);
        var isLedIn = ColourWords.LeadsIn(text.Word(at - 1)) || (text.IsSign(at - 1, '-') && ColourWords.LeadsIn(text.Word(at - 2)));

        return ColourWords.IsPlural(word) ? isLedIn || !text.IsWord(at - 1)
            : ColourWords.IsNoun(word) ? isLedIn
            : ColourWords.IsSingular(word) && (isLedIn || At(AfterBracket(at + 1)) is { Writing.Technique: not null } || (!text.IsWord(at - 1) && !text.IsWord(at + 1) && _met.StandsJustBefore(text, at)));
    }

    private int AfterBracket(int at) => text.IsSign(at, '(') ? at + 1 : at;

    private int InColour(int at)
    {
        Mark(text.Word(at - 1) is "full" || (text.IsSign(at - 1, '-') && text.IsWord(at - 2, "multi")) ? at - 2 : at, at + 1);

        if (At(AfterBracket(at + 1)) is { Writing.Technique: { } next } met && !NotPrints.SaysAThing(text, met))
        {
            Mark(met.Start, met.Next);
            _met.Add(met with { Writing = met.Writing with { Technique = ColourWords.Variant(next) ?? next } });
            _inColour |= !ColourWords.SaysColour(ColourWords.Variant(next) ?? next);

            return met.Next;
        }

        _inColour |= !_met.TurnLastToColour(text, at) && !_met.LastSaysColour;

        return at + 1;
    }

    private int? Support(int at)
    {
        var start = SupportWords.IsHeading(text, at) ? at + 2 : SupportWords.IsPreposition(text.Word(at)) ? at + 1 : 0;

        if (start == 0 || start >= text.Count || SupportWords.IsMounting(text.Word(at - 1)) || MatrixWords.At(text, start) is not null)
        {
            return null;
        }

        if (IsPrintItself(start))
        {
            return start;
        }

        var (end, trimmed) = SupportEnd(start);

        if (trimmed > start && (_support is not { } before || Span(before).SequenceEqual(Span((start, trimmed)))))
        {
            _support ??= (start, trimmed);
            Mark(at, trimmed);
        }

        return end;
    }

    /// <summary>"Chalk on etching": the sheet under it is a print; "on etching paper" is a paper.</summary>
    private bool IsPrintItself(int start) =>
        At(start) is { Writing.Technique: { } technique } met && technique.Word != "chine-colle" && !SupportWords.MaterialFollows(text, met.Next);

    private (int End, int Trimmed) SupportEnd(int start)
    {
        var end = start;

        while (end < text.Count && !EndsSupport(start, end))
        {
            // Chine collé is a technique wherever it stands.
            if (At(end) is { Writing.Technique.Word: "chine-colle" } chine)
            {
                _met.Add(chine);
                end = chine.Next;
            }
            else
            {
                end++;
            }
        }

        var trimmed = end;

        while (trimmed > start && (text.IsAnySign(trimmed - 1, ".,:-)") || LeftPhrases.IsJoining(text.Word(trimmed - 1))))
        {
            trimmed--;
        }

        return (Math.Max(end, start), trimmed);
    }

    private bool EndsSupport(int start, int at) =>
        text.IsAnySign(at, ";|([")
        || (text.IsSign(at, ',') && !SupportWords.GoesOnOver(text, start, at))
        || SupportWords.EndsSentence(text, at)
        || (at > start && SupportWords.IsAnotherMatter(text.Word(at)) && !SupportWords.IsMounting(text.Word(at - 1)))
        || (at > start && SupportWords.IsPreposition(text.Word(at)) && IsPrintItself(at + 1))
        || ((text.Word(at) is "and" or "und" or "et" or "e" or "y" or "a" or "en" or "from" or "de" || text.IsSign(at, '&')) && OpensAnother(at + 1))
        || (at > start && ColourWords.Counted(text, at) is not null);

    private bool OpensAnother(int at) =>
        IsPrintItself(at) || ColourWords.Counted(text, at) is not null || MatrixWords.At(text, at) is not null || ColourWords.IsPlural(text.Word(at)) || (text.IsDigits(at) && At(at + 1) is { Writing.Technique: not null });

    /// <summary>"Digital prints, watercolor paper": the last phrase ends in a paper, and nothing says "on".</summary>
    private (int From, int To)? LastSegment()
    {
        var end = text.Count;

        while (end > 0 && !text.IsWord(end - 1))
        {
            end--;
        }

        var from = end;

        while (from > 0 && !_read[from - 1] && (text.IsWord(from - 1) || text.IsSign(from - 1, '-')))
        {
            from--;
        }

        if (from == end || from == 0 || !text.IsAnySign(from - 1, ",;|") || !SupportWords.IsMaterial(text.Word(end - 1)))
        {
            return null;
        }

        Mark(from, end);

        return (from, end);
    }

    private void Mark(int from, int to) => Array.Fill(_read, true, Math.Max(0, from), to - Math.Max(0, from));

    private string? Written((int From, int To)? span) => span is { } said ? Span(said).ToString() : null;

    private ReadOnlySpan<char> Span((int From, int To) tokens) => text.Text.AsSpan(text[tokens.From].Start..text[tokens.To - 1].End);
}
