using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A year with its own width said: 1950 +/- 5, ± 10 (1890).</summary>
internal static class Tolerance
{
    private const int Widest = 100;

    public static DateSaid? Before(TokenText text, int at)
    {
        if (At(text, at) is not var (years, next))
        {
            return null;
        }

        var bracket = text.IsSign(next, '(');
        var digits = bracket ? next + 1 : next;

        return text.Figure(digits) is > 0 and var year && text[digits].Length == 4 && (!bracket || text.IsSign(digits + 1, ')')) ? Around(year, years, bracket ? digits + 2 : digits + 1) : null;
    }

    public static DateSaid? Behind(TokenText text, DateSaid date) =>
        date is { IsSpan: false, From: { Kind: MomentKind.Year } year } && At(text, date.Next) is var (years, next) ? Around(year.First, years, next) : null;

    private static DateSaid? Around(int year, int years, int next) => year + years > 9999 || year - years < -9999 ? null : DateSaid.Span(Moment.OfYear(Years.Shifted(year, -years)), Moment.OfYear(Years.Shifted(year, years)), next);

    private static (int Years, int Next)? At(TokenText text, int at)
    {
        var figure = text.IsSign(at, '\u00B1') ? at + 1 : text.IsSign(at, '+') && text.IsSign(at + 1, '/') && text.IsSign(at + 2, '-') ? at + 3 : at;

        return figure > at && text.Figure(figure) is >= 1 and <= Widest and var years ? (years, text.Word(figure + 1) is "years" or "year" ? figure + 2 : figure + 1) : null;
    }
}
