using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Makes one statement of everything that was met in a text.</summary>
internal sealed class StatementMade(TokenText text, Gathered found)
{
    private readonly List<Range> _read = [];

    public EditionStatement Make()
    {
        var copy = CopyChosen.Of(found.Fractions);
        GatheredMark? mark = copy?.Series is { } beside ? new GatheredMark(beside, null) : found.Marks.Count > 0 ? found.Marks[0] : null;
        var statement = mark is { } met ? Proof(met, copy?.Fraction) : copy is { } with ? Copy(with) : found.Sizes.Count > 0 ? Size() : Rest();

        if (statement.Kind is StatementKind.None or StatementKind.Declined)
        {
            return statement;
        }

        return WithState(statement) with { Read = _read, Span = Hull(), Source = text.Text };
    }

    private EditionStatement Proof(GatheredMark mark, Fraction? copy)
    {
        var size = Joined();
        var own = mark.Own;
        Took(mark.Series.Start, mark.Series.Next);

        if (copy is { } fraction)
        {
            Took(fraction.Start, fraction.Next);

            return Of(fraction, StatementKind.Proof, mark.Series.Series);
        }

        if (own is { } met)
        {
            Took(Math.Min(met.Start, mark.Series.Start), met.Next);
        }

        var ofEdition = own?.Of is null && own?.Bounds is null && size is { IsOpen: false } && !found.IsOutsideEdition ? size : null;
        var number = own is { } its ? its.Number : size?.Number;

        // The edition's size where the proofs' own is not given; twelve proofs beside an edition of ten are not 12/10.
        ofEdition = number > ofEdition?.Of ? null : ofEdition;
        TookSizes(own is null && size?.Number is not null ? size : ofEdition);

        return new EditionStatement
        {
            Kind = StatementKind.Proof,
            Series = mark.Series.Series,
            Number = number,
            Of = own?.Of ?? ofEdition?.Of,
            Letter = own?.Letter,
            Hedge = (own?.Of ?? (object?)own?.Bounds) is not null ? own!.Value.Hedge : ofEdition?.Hedge ?? SizeHedge.None,
            Bounds = own?.Bounds ?? ofEdition?.Bounds,
            NumberIsRoman = own?.IsRoman ?? false,
        };
    }

    private EditionStatement Copy(GatheredFraction copy)
    {
        var fraction = copy.Fraction;
        Took(copy.From, fraction.Next);

        return Of(fraction, fraction.Size.IsUnlimited ? StatementKind.Open : fraction.Number.IsUnknown ? StatementKind.Size : StatementKind.Numbered, Series.Edition);
    }

    private static EditionStatement Of(Fraction fraction, StatementKind kind, string series) => new()
    {
        Kind = kind,
        Series = series,
        Number = fraction.Number.Known,
        Of = fraction.Size.Of,
        Hedge = fraction.Size.Hedge,
        Bounds = fraction.Size.Bounds,
        NumberIsDoubted = fraction.IsNumberDoubted,
        NumberIsRoman = fraction.IsRoman,
    };

    private EditionStatement Size()
    {
        var size = Joined()!.Value;

        if (size.Number > size.Of)
        {
            return new EditionStatement { Kind = StatementKind.Declined, WhyNot = EditionStatementReader.Impossible, Source = text.Text };
        }

        TookSizes(size);

        return new EditionStatement
        {
            Kind = size.IsOpen ? StatementKind.Open : size.Number is not null || size.Letter is not null ? StatementKind.Numbered : StatementKind.Size,
            Series = size.IsOpen && size.Number is null ? null : Series.Edition,
            Number = size.Number,
            Of = size.Of,
            Letter = size.IsOpen ? null : size.Letter,
            Hedge = size.Hedge,
            Bounds = size.Bounds,
            NumberIsRoman = size.IsRoman,
        };
    }

    private EditionStatement Rest() =>
        found.Beside.Count > 0 ? new EditionStatement { Kind = StatementKind.Size, Series = Series.Edition }
        : found.States.Count > 0 ? new EditionStatement { Kind = StatementKind.State }
        : new EditionStatement { Kind = found.IsFaint ? StatementKind.Declined : StatementKind.None, WhyNot = found.IsFaint ? "It could be a proof's mark, a number of the edition, or something else." : null, Source = text.Text };

    private EditionStatement WithState(EditionStatement statement)
    {
        if (found.Beside.Count > 0)
        {
            Took(found.BesideSpan.Start, found.BesideSpan.Next);
        }

        if (found.States.Count == 0)
        {
            return statement with { Beside = found.Beside };
        }

        var state = found.States[0];
        Took(state.Start, state.Next);

        return statement with { Beside = found.Beside, State = state.State, StateOf = state.Of, StateIsRoman = state.IsRoman };
    }

    /// <summary>What several phrases say together: print #1, edition 15.</summary>
    private SizeMet? Joined()
    {
        if (found.Sizes.Count == 0)
        {
            return null;
        }

        var joined = found.Sizes[0];

        foreach (var size in found.Sizes)
        {
            var hasSize = joined.Of is not null || joined.Bounds is not null || joined.IsOpen;
            var isNew = !hasSize && (size.Of is not null || size.Bounds is not null);
            var isNumber = joined.Number is null && joined.Letter is null && size.Number is not null;
            joined = joined with
            {
                Number = isNumber ? size.Number : joined.Number,
                Of = isNew ? size.Of : joined.Of,
                Hedge = isNew ? size.Hedge : joined.Hedge,
                Bounds = isNew ? size.Bounds : joined.Bounds,
                IsRoman = joined.IsRoman || (size.IsRoman && (isNew || isNumber)),
            };
        }

        return joined;
    }

    private void TookSizes(SizeMet? size)
    {
        if (size is null)
        {
            return;
        }

        foreach (var one in found.Sizes)
        {
            Took(one.Start, one.Next);
        }
    }

    private void Took(int start, int next) => _read.Add(text[start].Start..text[next - 1].End);

    private Range Hull()
    {
        var (start, end) = (int.MaxValue, 0);

        foreach (var part in _read)
        {
            (start, end) = (Math.Min(start, part.Start.Value), Math.Max(end, part.End.Value));
        }

        return start..end;
    }
}
