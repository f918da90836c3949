using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Shows;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Shows;

/// <summary>The room of shows, on the demo.</summary>
internal static class ShowsHouse
{
    /// <summary>“Open studio 2026” in the studio, with three sheets listed: 3/12 and 1/12 of the reduction print, and a pupil's.</summary>
    public static async Task<(TestHouse House, long Show)> WithShowAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        var show = house.Register.MakeShow.Run(new NewShow
        {
            Name = "Open studio 2026",
            Kind = "sale",
            Place = 1,
            Host = 3,
            Opens = RecordedDate.Read("2026-06-12"),
            Closes = RecordedDate.Read("2026-06-14"),
            Note = "Bring the small press.",
        });
        house.Register.AddToShow.Run(show, new ImpressionChoice { Edition = 1, Sheets = "3, 1" });
        house.Register.AddToShow.Run(show, new ImpressionChoice { Edition = 5, Sheets = "1" });
        await house.PressAsync("6", "Enter");

        return (house, show);
    }

    /// <summary>Which numbers are listed, in list order.</summary>
    public static IEnumerable<string> Listed(this TestHouse house, long show) =>
        house.Register.LookAround.Show(show).Listed.Select(listed => $"{listed.Work.ShownTitle} {listed.Work.NumberOf(listed.Impression)}");
}
