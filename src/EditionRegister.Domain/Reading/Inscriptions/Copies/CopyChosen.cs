namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Which of several fractions is the copy's: the one good one, the one that a mark or the word edition stands by, or the one that all repeat.</summary>
internal static class CopyChosen
{
    public static GatheredFraction? Of(List<GatheredFraction> fractions)
    {
        GatheredFraction? first = null;
        var (good, announced, plain, same) = (0, 0, 0, true);
        (GatheredFraction? lastAnnounced, GatheredFraction? lastPlain) = (null, null);

        foreach (var fraction in fractions)
        {
            if (fraction.Standing != FractionStanding.Good)
            {
                continue;
            }

            good++;
            first ??= fraction;
            same &= (fraction.Fraction.Number.Known, fraction.Fraction.Size.Of) == (first.Value.Fraction.Number.Known, first.Value.Fraction.Size.Of);
            (announced, lastAnnounced) = fraction.IsAnnounced ? (announced + 1, fraction) : (announced, lastAnnounced);
            (plain, lastPlain) = fraction.Fraction.Parting != Parting.InWords ? (plain + 1, fraction) : (plain, lastPlain);
        }

        return good == 1 ? first
            : announced == 1 ? lastAnnounced
            : plain == 1 && announced == 0 ? lastPlain
            : good > 1 && same ? first
            : null;
    }
}
