using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>One way through a text, from figure to figure.</summary>
internal sealed class SizeScan(TokenText text, LengthUnit assumed)
{
    private readonly List<Measured> _sizes = [];
    private readonly List<SizeDeclined> _declined = [];
    private readonly bool _endsNamed = PartNames.EndWith(text);

    // The token after the size before, and the order of lengths that was announced since.
    private int _floor;
    private Direction[]? _order;

    public SizesRead Run()
    {
        for (var at = 0; at < text.Count;)
        {
            at = Step(at);
        }

        return new SizesRead(_sizes, _declined);
    }

    private int Step(int at)
    {
        if (Directions.Order(text, at, out var behind) is { } order)
        {
            _order = order;

            return behind;
        }

        if (!IsStart(at) || Group.At(text, at) is not { } group)
        {
            return at + 1;
        }

        group = Assumed(group);
        var pair = SizePair.Of(text, group);

        if (pair.Second is null && !group.HasUnit && group.Count == 1)
        {
            return group.Next;
        }

        if ((pair.Fault is SizeFault.None or SizeFault.NoUnit) && (RangeBefore(at) is not null || IsRangeBehind(group.Next)))
        {
            pair = SizePair.Alone(group with { Fault = SizeFault.ARange }, group.Next);
        }

        return pair.Fault != SizeFault.None ? Decline(pair) : Take(pair, pair.First.Start);
    }

    // 310 x 220 in a field of millimetres; a figure alone only where it is all there is.
    private Group Assumed(Group group) =>
        group.HasUnit || assumed == LengthUnit.None || (group.Count == 1 && !(group.Start == 0 && group.Next == text.Count)) ? group : group.In(assumed);

    /// <summary>Not in the middle of a word or another figure: K2, 12:30.</summary>
    private bool IsStart(int at)
    {
        if (at == 0 || text.IsApart(at))
        {
            return true;
        }

        if (text.IsWord(at - 1))
        {
            return Lengths.IsTimes(text, at - 1) || Units.OfWord(text.Word(at - 1)) != LengthUnit.None;
        }

        return !text.IsDigits(at - 1) && !text.IsAnySign(at - 1, "#$€£@_\\");
    }

    private int Decline(SizePair pair)
    {
        var start = RangeBefore(pair.First.Start) ?? pair.First.Start;
        var end = IsRangeBehind(pair.First.Next) ? pair.First.Next + 2 : pair.First.Next;
        var span = text[start].Start..text[end - 1].End;
        _declined.Add(new SizeDeclined(text.Text[span], pair.Fault, span));
        _order = null;

        // What stands beside it in another system may be read even so, under its name.
        if (pair.Second is { Fault: SizeFault.None, HasUnit: true } second)
        {
            return Take(SizePair.Alone(second, pair.Next), pair.First.Start);
        }

        _floor = end;

        return end;
    }

    /// <param name="pair">What was read.</param>
    /// <param name="start">The token that its name stands before.</param>
    private int Take(SizePair pair, int start)
    {
        var before = PartNames.Before(text, start, _floor);
        var end = pair.Next;
        var order = OrderBehind(ref end) ?? _order;
        var isRound = pair.First.Count == 1 && Directions.After(text, end, out end) == Direction.Diameter;
        var (isAbout, isIrregular) = (IsAboutBefore(start), false);
        Hedge(ref end, ref isAbout, ref isIrregular);
        var name = before ?? PartNames.Behind(text, end, _endsNamed);
        end = before is null && name is not null ? name.Next : end;
        Hedge(ref end, ref isAbout, ref isIrregular);

        _sizes.Add(SizePlacing.Of(pair, order, isRound) with
        {
            Parts = name?.Parts ?? [],
            Named = name?.Words,
            IsAbout = isAbout,
            IsIrregular = isIrregular,
            Span = text[pair.First.Start].Start..text[pair.Next - 1].End,
        });
        (_floor, _order) = (end, null);

        return end;
    }

    /// <summary>The first token of 30-32 or 30 to 32, whose last figure begins here; null where there is no range.</summary>
    private int? RangeBefore(int at) =>
        text.IsDigits(at) && text.IsDigits(at - 2) && ((text.IsSign(at - 1, '-') && !text.IsApart(at - 1) && !text.IsApart(at)) || text.Word(at - 1) is "to" or "bis") ? at - 2 : null;

    private bool IsRangeBehind(int at) => text.IsSign(at, '-') && text.IsDigits(at + 1) && !text.IsApart(at) && !text.IsApart(at + 1);

    /// <summary>31 x 22 cm (H x B).</summary>
    private Direction[]? OrderBehind(ref int at)
    {
        if (text.IsSign(at, '(') && Directions.Order(text, at + 1, out var close) is { } order && text.IsSign(close, ')'))
        {
            at = close + 1;

            return order;
        }

        return null;
    }

    /// <summary>c. 30 x 20 cm; unconfirmed: 30 x 20 cm.</summary>
    private bool IsAboutBefore(int at) => Hedges.At(text, at - 1, out _) == Sizes.Hedge.About || (text.IsAnySign(at - 1, ".:") && Hedges.At(text, at - 2, out _) == Sizes.Hedge.About);

    /// <summary>30 x 20 cm, irregular; 30 x 20 cm (approx.).</summary>
    private void Hedge(ref int at, ref bool isAbout, ref bool isIrregular)
    {
        var word = text.IsAnySign(at, "(,") ? at + 1 : at;
        var hedge = Hedges.At(text, word, out var next);

        if (hedge == Sizes.Hedge.None || (text.IsSign(at, '(') && !text.IsSign(next, ')')) || text.IsDigits(next) || text.IsAnySign(next, ":="))
        {
            return;
        }

        isAbout |= hedge == Sizes.Hedge.About;
        isIrregular |= hedge == Sizes.Hedge.Irregular;
        at = text.IsSign(at, '(') ? next + 1 : next;
    }
}
