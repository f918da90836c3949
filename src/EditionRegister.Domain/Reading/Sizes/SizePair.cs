using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>One size as it stands in a text: alone, or in two systems of measure side by side.</summary>
internal sealed record SizePair(Group First, Group? Second, SizeFault Fault, int Next)
{
    public static SizePair Alone(Group group, int next) => new(group, null, group.Fault, next);

    public static SizePair Of(TokenText text, Group first)
    {
        var next = text.IsSign(first.Next, '.') ? first.Next + 1 : first.Next;
        var isBracketed = text.IsAnySign(next, "([");
        var start = isBracketed || text.IsAnySign(next, ";,=/") || text.Word(next) is "or" or "oder" or "ou" ? next + 1 : next;

        if (Group.At(text, start) is not { } second || second.Count != first.Count)
        {
            return Alone(first, first.Next);
        }

        var end = isBracketed && text.IsAnySign(second.Next, ")]") ? second.Next + 1 : second.Next;

        return Together(first, second, isBracketed, end) ?? Alone(first, first.Next);
    }

    private static SizePair? Together(Group first, Group second, bool isBracketed, int end) => (first.HasUnit, second.HasUnit) switch
    {
        // One of them may be unreadable; the other is kept.
        (true, true) when first.IsMetric != second.IsMetric => second.Fault == SizeFault.None ? new(first, second, first.Fault, end) : null,
        (false, true) when isBracketed && second.Fault == SizeFault.None => UnitFound(first, second) is { } found ? new(found, second, SizeFault.None, end) : new(first, second, first.Fault, end),
        (true, false) when isBracketed && first.Fault == SizeFault.None && UnitFound(second, first) is { } found => new(first, found, SizeFault.None, end),
        _ => null,
    };

    /// <summary>12 x 9 (30.5 x 22.9 cm): the only unit of the other system in which both say the same.</summary>
    private static Group? UnitFound(Group without, Group with)
    {
        if (without.Count < 2)
        {
            return null;
        }

        LengthUnit[] others = with.IsMetric ? [LengthUnit.Inch] : [LengthUnit.Millimetre, LengthUnit.Centimetre];

        return others.Select(without.In).FirstOrDefault(found => found.Fault == SizeFault.None && Tolerance.Apart(found, with) <= Tolerance.Of(found, with));
    }
}
