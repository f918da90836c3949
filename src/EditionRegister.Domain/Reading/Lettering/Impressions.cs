using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>Where "imp." says nothing of a printer: 30 imp., imp. IV, and a fabric that was imported.</summary>
internal static class Impressions
{
    // No year of the trade's two last figures is below, and nobody pencils a larger count so.
    private const int LargestCount = 31;

    public static bool AreMeant(TokenText text, RoleMet role)
    {
        if (role.Role != LetteringRole.Printed || role.NamePlace != NamePlace.Either)
        {
            return false;
        }

        return IsCounted(text, role.Start) || IsNumbered(text, role.Next) || IsLabelled(text, role.Start);
    }

    private static bool IsCounted(TokenText text, int at)
    {
        var count = text.IsSign(at - 1, '/') ? at - 2 : at - 1;

        return text.Figure(count) is { } figure && !text.IsAnySign(count - 1, "'`") && (figure <= LargestCount || count == 0);
    }

    private static bool IsNumbered(TokenText text, int at) =>
        (text.IsDigits(at) && text[at].Length < 3 && text.IsApart(at)) || text.Word(at) is "i" or "ii" or "iii" or "iv" or "v" or "vi" or "vii" or "viii" or "ix" or "x";

    /// <summary>#4885 Pekin Radium Imp.: the number on a label, and what it is stuck to.</summary>
    private static bool IsLabelled(TokenText text, int at)
    {
        var first = NameWords.Before(text, at) ?? at;

        return text.IsDigits(first - 1) && (text.IsSign(first - 2, '#') || text.Word(text.IsSign(first - 2, '.') ? first - 3 : first - 2) is "no");
    }
}
