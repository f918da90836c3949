using EditionRegister.Domain.Chains;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Moves;

/// <summary>Lists what is to be back, collected, answered for or let go: over already, or within some days.</summary>
public sealed class ListDue(RegisterStore store)
{
    /// <summary>How many days ahead are looked at when nothing else is said.</summary>
    public const int UsualDays = 30;

    /// <summary>The earliest first.</summary>
    /// <param name="on">The day looked at; today when not said.</param>
    /// <param name="days">How many days ahead.</param>
    public DueListed Run(DateOnly? on = null, int days = UsualDays)
    {
        var day = on ?? DateOnly.FromDateTime(store.Time.GetLocalNow().DateTime);

        return new DueListed(day, days, store.Read(reader => reader.Works()
            .SelectMany(work => Due.Of(work, day, days))
            .OrderBy(due => due.Until.Latest ?? DateOnly.MaxValue).ThenBy(due => due.Until.Earliest).ThenBy(due => due.Work.Id).ThenBy(due => due.Sheet.Id)
            .ToList()));
    }
}

/// <summary>What is due on a day and within some days after it.</summary>
public sealed record DueListed(DateOnly On, int Days, IReadOnlyList<DueSheet> Sheets);
