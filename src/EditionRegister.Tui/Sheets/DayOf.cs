using EditionRegister.Domain.Dates;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Sheets;

/// <summary>The day a deed is dated: as typed, or today.</summary>
internal static class DayOf
{
    public static RecordedDate Deed(Desk desk, string? typed) => Fields.DateOf(typed) ?? RecordedDate.On(desk.Today);
}
