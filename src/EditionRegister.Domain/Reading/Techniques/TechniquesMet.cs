using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>The techniques met in a text, and which of them hold when all is read.</summary>
internal sealed class TechniquesMet
{
    private readonly List<Met> _all = [];

    public void Add(Met met) => _all.Add(met);

    public bool LastSaysColour => _all is [.., { Writing.Technique: { } last }] && ColourWords.SaysColour(last);

    public bool LastIsFromPlates => _all is [.., { Writing.Technique: { } last }] && (last.Family == TechniqueFamily.Intaglio || last.Family == TechniqueFamily.Planographic);

    /// <summary>"Etching", and not "etchings", which may be those of a book.</summary>
    public bool LastIsOne(TokenText text) => _all is [.., { } last] && text.Word(last.Next - 1) is not [.., 's'];

    /// <summary>"Woodcut in colors": the technique just before says colour now; false where the list has no word for it, or it stands farther off.</summary>
    public bool TurnLastToColour(TokenText text, int at)
    {
        if (!StandsJustBefore(text, at))
        {
            return false;
        }

        var last = _all[^1];

        if (ColourWords.Variant(last.Writing.Technique!) is { } variant)
        {
            _all[^1] = last with { Writing = last.Writing with { Technique = variant } };
        }

        return ColourWords.SaysColour(_all[^1].Writing.Technique!);
    }

    /// <summary>Each once, in order. What holds only in company goes where there is none, and its words are left.</summary>
    public List<Technique> Settled(TokenText text, bool[] read)
    {
        var isPrint = _all.Exists(IsOfItself) || (_all.Exists(met => met.Writing.Technique!.Word == "print") && !IsOfPhotographs(text));

        if (!isPrint && !IsNothingElse(text, read))
        {
            _all.ForEach(met => Array.Fill(read, false, met.Start, met.Next - met.Start));

            return [];
        }

        return Each(_all.Exists(met => IsOfItself(met) && met.Writing.Technique!.Family != TechniqueFamily.Beside));
    }

    private List<Technique> Each(bool printIsSaid)
    {
        List<Technique> each = [];
        HashSet<string> seen = new(StringComparer.Ordinal);

        foreach (var technique in _all.Select(met => met.Writing.Technique!))
        {
            if (!(technique.Word == "print" && printIsSaid) && seen.Add(technique.Word))
            {
                each.Add(technique);
            }
        }

        return Reductions.Joined(each);
    }

    private static bool IsOfItself(Met met) => !met.Writing.NeedsCompany && met.Writing.Technique!.Word != "print";

    // "Hand-colored" may be all that is said of a sheet.
    private bool IsNothingElse(TokenText text, bool[] read) =>
        _all.Count > 0 && _all[0].Writing.Technique!.Family == TechniqueFamily.Beside && Enumerable.Range(0, text.Count).All(at => read[at] || !text.IsWord(at) || text.Word(at) is "proof" or "proofs");

    private static bool IsOfPhotographs(TokenText text)
    {
        for (var at = 0; at < text.Count; at++)
        {
            if (NotPrints.IsPhotographic(text.Word(at)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether the last technique stands just before a word that says colour.</summary>
    public bool StandsJustBefore(TokenText text, int at)
    {
        if (_all.Count == 0)
        {
            return false;
        }

        var next = _all[^1].Next;

        while (next < at && at - next <= 4 && (!text.IsWord(next) || ColourWords.LeadsIn(text.Word(next))))
        {
            next++;
        }

        return next == at;
    }
}
