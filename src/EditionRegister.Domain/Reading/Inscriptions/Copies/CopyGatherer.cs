using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>Gathers copies' numbers and the marks of proofs, each with the other where they stand side by side.</summary>
internal sealed class CopyGatherer(TokenText text, SeriesReader series, Gathered found)
{
    private Surroundings? _around;

    private Surroundings Around => _around ??= new Surroundings(text);

    public int Mark(SeriesMet mark)
    {
        // A society's monogram, a title's quotation.
        if (text.IsAnySign(mark.Next, "[(") && text.IsWord(mark.Next + 1, "monogram"))
        {
            return mark.Next;
        }

        var next = MarkNumbers.Over(text, mark.Next);

        if (Fractions.At(text, next, Before.Mark) is { } fraction && !(text.IsSign(next, '/') && next == mark.Next) && IsNumberOf(mark, fraction) && !NoCopies.IsOne(text, fraction, Before.Mark, Around))
        {
            Add(fraction, Before.Mark, mark);

            return fraction.Next;
        }

        var own = MarkNumbers.Behind(text, mark, next);

        if (!mark.IsSure && (own is null || mark.Certainty == Certainty.Silent) && !MarkNumbers.IsLetters(text, next))
        {
            found.IsFaint |= mark.Certainty == Certainty.Doubtful;

            return mark.Next;
        }

        found.Marks.Add(new GatheredMark(mark, own));

        return Math.Max(mark.Next, own?.Next ?? 0);
    }

    /// <summary>Pp. 191-192 are pages; h.c. 9-10 is a number.</summary>
    private static bool IsNumberOf(SeriesMet mark, Fraction fraction) => mark.IsSure || fraction.Parting is not (Parting.Dash or Parting.InWords);

    public int? Fraction(int at)
    {
        if (Fractions.Beyond(text, at) is { } beyond)
        {
            found.IsFaint = true;

            return beyond;
        }

        if (!Fractions.MayBegin(text, at))
        {
            return null;
        }

        var before = Announcements.Of(text, at, out var word);

        if (Fractions.At(text, at, before) is not { } fraction || IsWordsOnly(fraction, before) || NoCopies.IsOne(text, fraction, before, Around))
        {
            return null;
        }

        var next = OverSigns(fraction.Next);

        if (series.At(text, next) is { IsPlural: false } mark && (mark.IsSure || fraction.Parting != Parting.InWords))
        {
            // A mark behind makes sure of what was doubtful alone.
            Add(fraction, Before.Mark, mark);

            return mark.Next;
        }

        Add(fraction, before, null, word);

        return fraction.Next;
    }

    /// <summary>Of, said of anything: only figures before and behind, at the beginning of the text, can be a copy's.</summary>
    private bool IsWordsOnly(Fraction fraction, Before before)
    {
        if (fraction.Parting != Parting.InWords)
        {
            return false;
        }

        var word = Announcements.WordBefore(text, fraction.Start);

        return before == Before.Anything ? fraction.Start > 0 || fraction.Number.Kind != NumeralKind.Arabic || fraction.Size.IsRoman : EditionWords.IsNumberWord(text.Word(word)) && !Announcements.BeginsALine(text, word);
    }

    private void Add(Fraction fraction, Before before, SeriesMet? mark, int? from = null)
    {
        var standing = fraction.IsImpossible ? FractionStanding.Impossible : CopyDoubts.IsOne(text, fraction, before, Around) ? FractionStanding.Doubtful : FractionStanding.Good;
        found.Fractions.Add(new GatheredFraction(fraction, standing, mark, before != Before.Anything) { From = from ?? fraction.Start });

        if (mark is { } met)
        {
            found.Marks.Add(new GatheredMark(met, null));
        }
    }

    private int OverSigns(int at)
    {
        for (var skipped = 0; skipped < 2 && text.IsAnySign(at, "-(\"'"); skipped++)
        {
            at++;
        }

        return at;
    }
}
