using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>A month, with a day or some days of it, in either order, before its year is known: 17 February, June 10-12, 1er mars.</summary>
internal readonly record struct MonthDay(int Month, int? Day, int? LastDay, int Next)
{
    private static readonly HashSet<string> Endings = DateWords.Of("st nd rd th er e");
    private static readonly HashSet<string> Of = DateWords.Of("of de di");

    public static MonthDay? At(TokenText text, int at) => DayFirst(text, at) ?? MonthFirst(text, at);

    private static MonthDay? DayFirst(TokenText text, int at)
    {
        if (DayAt(text, at) is not { } first)
        {
            return null;
        }

        var second = text.IsAnySign(first.Next, "-/") || text.Is(first.Next, DateWords.And) || text.Is(first.Next, DateWords.To) ? DayAt(text, first.Next + 1) : null;
        var next = second?.Next ?? first.Next;
        next = text.IsAnySign(next, "-./") || text.Is(next, Of) ? next + 1 : next;

        return MonthNames.Month(text, next) is { } month ? new MonthDay(month, first.Day, second?.Day, AfterName(text, next)) : null;
    }

    private static MonthDay? MonthFirst(TokenText text, int at)
    {
        if (MonthNames.Month(text, at) is not { } month)
        {
            return null;
        }

        var next = AfterName(text, at);

        if (DayAt(text, next) is not { } first || text.IsSign(next - 1, ','))
        {
            return new MonthDay(month, null, null, next);
        }

        var second = text.IsAnySign(first.Next, "-/") || text.Is(first.Next, DateWords.And) ? DayAt(text, first.Next + 1) : null;

        return second is { } last && !IsDayOfMonth(text, first.Next + 1)
            ? new MonthDay(month, first.Day, last.Day, last.Next)
            : new MonthDay(month, first.Day, null, first.Next);
    }

    // In "April 24-16 May" the second figure is the day of the second month.
    private static bool IsDayOfMonth(TokenText text, int at) => DayAt(text, at) is { } day && MonthNames.Month(text, day.Next) is not null;

    private static (int Day, int Next)? DayAt(TokenText text, int at) =>
        text.Figure(at) is not (>= 1 and <= 31 and var day) || text[at].Length > 2 ? null
        : text.Is(at + 1, Endings) && !text.IsApart(at + 1) ? (day, at + 2)
        : text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? (day, at + 2)
        : (day, at + 1);

    private static int AfterName(TokenText text, int at) => text.IsAnySign(at + 1, ".,") ? at + 2 : at + 1;
}
