using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Logbook;

/// <summary>Asks for a day to go to.</summary>
internal static class DayForm
{
    private const string Day = "Day";

    public static Form Open(Func<DateOnly, Task<string>> goAsync) => new("Go to a day", [
        DayField.Of(Day, isNeeded: true),
    ], async form => new Saved(await goAsync(RecordedDate.Read(form[Day]).Latest!.Value)))
    {
        About = ["Goes to the last entry of that day, or the nearest before it."],
    };
}
