using EditionRegister.Domain.Reading.Inscriptions.Copies;
using EditionRegister.Domain.Reading.Inscriptions.Editions;
using EditionRegister.Domain.Reading.Inscriptions.Proofs;
using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>
/// Reads what an inscription or a cataloguer says of a sheet's number, its edition, the kind of proof and the state. It answers typed
/// values with the span it read, or declines with a reason; it never guesses. One pass, and the time is that of the text's length.
/// </summary>
public static class EditionStatementReader
{
    internal const string Impossible = "A sheet cannot have a number above its edition's size, or none.";

    /// <param name="text">What is written, or said of the sheet.</param>
    /// <param name="own">A register's own kinds of proof: their marks and names are looked for before the trade's.</param>
    public static EditionStatement Read(string? text, OwnWords? own = null)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return new EditionStatement { Kind = StatementKind.None, Source = text ?? "" };
        }

        TokenText tokens = new(text);
        var found = Gatherer.Gather(tokens, SeriesReader.With(own));

        return WhyNot(found) is { } why ? new EditionStatement { Kind = StatementKind.Declined, WhyNot = why, Source = text } : new StatementMade(tokens, found).Make();
    }

    /// <summary>Why nothing should be read of it, or null.</summary>
    private static string? WhyNot(Gathered found)
    {
        if (found.Marks.Exists(mark => mark.Series.Series == Series.Ambiguous))
        {
            return "S/P means a state proof to one workshop and a special proof to another.";
        }

        if (found.States.Exists(state => state.IsDoubtful))
        {
            return "The text leaves open which state it is.";
        }

        if (found.Fractions.Exists(fraction => fraction.Standing == FractionStanding.Impossible))
        {
            return Impossible;
        }

        if (CopyChosen.Of(found.Fractions) is not null)
        {
            return null;
        }

        return found.Fractions.Exists(fraction => fraction.Standing == FractionStanding.Good) ? "More than one number stands there, and none is marked as the copy's."
            : found.Fractions.Count > 0 || found.Sizes.Exists(size => size.IsDoubtful) ? "The figures could be a date, a measure or something else."
            : null;
    }
}
