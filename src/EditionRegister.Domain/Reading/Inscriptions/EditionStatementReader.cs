using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>
/// Reads what an inscription or a cataloguer says of a sheet's number, its edition, the kind of proof and the state. It answers typed
/// values with the span it read, or declines with a reason; it never guesses. One pass, and the time is that of the text's length.
/// </summary>
public static class EditionStatementReader
{
    public static EditionStatement Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Nothing(StatementKind.None, null);
        }

        TokenText tokens = new(text);

        return Decide(tokens, Gathered.From(tokens));
    }

    private static EditionStatement Decide(TokenText text, Gathered found)
    {
        if (found.Marks.Any(mark => mark.Series == SeriesWords.Ambiguous))
        {
            return Nothing(StatementKind.Declined, "S/P means a state proof to one workshop and a special proof to another.");
        }

        if (found.States.Any(state => state.IsDoubtful))
        {
            return Nothing(StatementKind.Declined, "The text leaves open which state it is.");
        }

        if (found.Fractions.Any(fraction => fraction.Standing == FractionStanding.Impossible))
        {
            return Nothing(StatementKind.Declined, "A sheet cannot have a number above its edition's size, or none.");
        }

        var good = Chosen(found);

        if (good is null && found.Fractions.Any(fraction => fraction.Standing == FractionStanding.Good))
        {
            return Nothing(StatementKind.Declined, "More than one number stands there, and none is marked as the copy's.");
        }

        if (good is null && (found.Fractions.Count > 0 || found.Sizes.Any(size => size.IsDoubtful)))
        {
            return Nothing(StatementKind.Declined, "The figures could be a date, a measure or something else.");
        }

        return Statement(text, found, good);
    }

    /// <summary>The one good fraction; of several the one that a mark or the word edition stands by, if it is one.</summary>
    private static GatheredFraction? Chosen(Gathered found)
    {
        var good = found.Fractions.Where(fraction => fraction.Standing == FractionStanding.Good).ToList();
        var announced = good.Where(fraction => fraction.Series is not null || fraction.IsAnnounced).ToList();
        var plain = good.Where(fraction => !fraction.Fraction.IsInWords).ToList();

        return good.Count == 1 ? good[0]
            : announced.Count == 1 ? announced[0]
            : plain.Count == 1 && announced.Count == 0 ? plain[0]
            : good.Count > 1 && good.Select(fraction => (fraction.Fraction.Number, fraction.Fraction.Of)).Distinct().Count() == 1 ? good[0]
            : null;
    }

    private static EditionStatement Statement(TokenText text, Gathered found, GatheredFraction? good)
    {
        var state = found.States.Count > 0 ? found.States[0] : (StateMet?)null;
        var mark = good?.Series is { } beside ? beside : found.Marks.Count > 0 ? found.Marks[0] : (SeriesMet?)null;
        var size = Joined(found.Sizes);
        var hasSize = size != default;

        if (good is { Fraction: { } fraction })
        {
            return mark is not null ? Proof(text, found, mark.Value, fraction, size, hasSize, state)
                : fraction.IsUnlimited ? With(text, StatementKind.Open, "edition", state, fraction.Start, fraction.Next) with { Number = fraction.Number, NumberIsRoman = fraction.IsRoman, Beside = found.Beside }
                : With(text, fraction.Number is null ? StatementKind.Size : StatementKind.Numbered, "edition", state, fraction.Start, fraction.Next) with
                {
                    Number = fraction.Number,
                    Of = fraction.Of,
                    Hedge = fraction.Hedge,
                    NumberIsRoman = fraction.IsRoman,
                    Beside = found.Beside,
                };
        }

        if (mark is { } proof)
        {
            return Proof(text, found, proof, null, size, hasSize, state);
        }

        if (hasSize)
        {
            var kind = size.IsOpen ? StatementKind.Open : size.Number is not null || size.Letter is not null ? StatementKind.Numbered : StatementKind.Size;

            return With(text, kind, size.IsOpen ? null : "edition", state, size.Start, size.Next) with
            {
                Number = size.Number,
                Of = size.Of,
                Letter = size.Letter,
                Hedge = size.Hedge,
                NumberIsRoman = size.IsRoman,
                Beside = found.Beside,
            };
        }

        if (found.Beside.Count > 0)
        {
            return With(text, StatementKind.Size, "edition", state, 0, text.Count) with { Beside = found.Beside };
        }

        return state is { } met
            ? With(text, StatementKind.State, null, state, met.Start, met.Next)
            : Nothing(found.IsFaint ? StatementKind.Declined : StatementKind.None, found.IsFaint ? "It could be a proof's mark, a number of the edition, or something else." : null);
    }

    /// <summary>What several phrases say together: print #1, edition 15.</summary>
    private static SizeMet Joined(List<SizeMet> sizes)
    {
        var joined = sizes.FirstOrDefault();

        foreach (var size in sizes.Skip(1))
        {
            joined = joined with { Number = joined.Number ?? size.Number, Of = joined.Of ?? size.Of, Next = Math.Max(joined.Next, size.Next), IsRoman = joined.IsRoman || size.IsRoman };
        }

        return joined;
    }

    private static EditionStatement Proof(TokenText text, Gathered found, SeriesMet mark, Fraction? fraction, SizeMet size, bool hasSize, StateMet? state)
    {
        var number = fraction is null ? found.NumbersOfMarks.GetValueOrDefault(mark.Start) : null;
        var start = Math.Min(mark.Start, fraction?.Start ?? mark.Start);
        var next = Math.Max(Math.Max(mark.Next, fraction?.Next ?? 0), number?.Next ?? 0);

        return With(text, StatementKind.Proof, mark.Series, state, start, next) with
        {
            Number = fraction is { } with ? with.Number : number?.Number ?? (hasSize ? size.Number : null),
            Of = fraction is { } of ? of.Of : number?.Of ?? (hasSize && !found.IsOutsideEdition ? size.Of : null),
            Letter = number?.Letter,
            Hedge = fraction?.Hedge ?? number?.Hedge ?? SizeHedge.None,
            NumberIsRoman = fraction?.IsRoman ?? number?.IsRoman ?? false,
            Beside = found.Beside,
        };
    }

    private static EditionStatement With(TokenText text, StatementKind kind, string? series, StateMet? state, int start, int next)
    {
        var (first, last) = state is { } met ? (Math.Min(start, met.Start), Math.Max(next, met.Next)) : (start, next);

        return new EditionStatement { Kind = kind, Series = series, State = state?.State, StateOf = state?.Of, StateIsRoman = state is { IsRoman: true }, Span = text[first].Start..text[last - 1].End };
    }

    private static EditionStatement Nothing(StatementKind kind, string? why) => new() { Kind = kind, WhyNot = why };
}
