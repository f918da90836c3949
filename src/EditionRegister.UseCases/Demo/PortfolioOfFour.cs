using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Demo;

/// <summary>
/// A portfolio of four small prints by the people of the studio: three copies and one artist's proof, each in a folder with a colophon that is signed
/// instead of the sheets. One print that came out uneven was worked over by hand. Everyone in it is invented.
/// </summary>
internal sealed class PortfolioOfFour(Register register, ScenarioClock clock)
{
    private const string Title = "Four Tides";
    private const string WorkedOver = "Neap, at Night";

    private const string Graded = "Neap";
    private const string Shelf = "Studio › Portfolio shelf";
    private const string Folders = "Studio › Portfolio shelf › Folders";

    private static readonly (string Title, string Maker, string Technique)[] Prints =
    [
        ("Ebb", CoastalStudio.Maker, "linocut"), (Graded, CoastalStudio.Maker, "woodcut"), ("Flood", "Joost Averink", "drypoint"), ("Spring Tide", "Joost Averink", "linocut"),
    ];

    public void Tell()
    {
        clock.OnTo(2026, 11, 2);
        register.RecordPlace.Run(Folders);
        var parts = Prints.Select(print => Printed(print.Title, print.Maker, print.Technique, Shelf)).ToList();
        var portfolio = Printed(Title, CoastalStudio.Maker, "letterpress colophon", Folders);

        register.MakeSet.Run(portfolio, "portfolio", "colophon", "in folders of grey board");
        register.ChangeSetParts.Add(portfolio, parts);
        register.GatherSet.ByNumber(portfolio, copies: null);
        var edition = register.LookAround.Work(portfolio).Editions[0].Id;
        register.SignSheets.Done(edition, "1-3, A/P I", "M. Tolland, J. Averink");
        register.PriceImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1-3" }, 32_000, "EUR", null);

        clock.OnTo(2026, 11, 6);
        register.Consign.Run(new ImpressionChoice { Edition = edition, Sheets = "2" }, CoastalStudio.Gallery, rate: 4_000, note: "for the winter");
        WorkOver(parts[1]);
    }

    /// <summary>Four sheets of each, all kept, numbered 1 to 3 and A/P I; of “Neap” five, graded, and the one that was not proposed left out.</summary>
    private long Printed(string title, string maker, string technique, string place)
    {
        var sheets = title == Graded ? 5 : 4;
        var work = register.RecordWork.Run(new NewWork { Title = title, Year = RecordedDate.Read("2026"), Technique = technique }, [maker]);
        register.RecordPrintRun.Run(
            work,
            new NewPrintRun
            {
                Paper = "Japanese kozo, 70 g/m²", Printed = RecordedDate.Read("2026-10"), Started = sheets,
                ImageHeight = 120_000, ImageWidth = 90_000, SheetHeight = 210_000, SheetWidth = 150_000,
            },
            place);

        if (title == Graded)
        {
            register.GradeSheets.Run(Pile(work, "1, 3-5"), Grade(5, 4, 5, 5, 4));
            register.GradeSheets.Run(Pile(work, "2"), Grade(3, 2, 4, 3, 2));
            register.ProposeKept.Take(work, 1, 4);
            register.SortPulls.Run(Pile(work, "2"), "left-out", "uneven");
        }
        else
        {
            register.SortPulls.Run(Pile(work, "1-4"), "kept");
        }

        var edition = register.DeclareEdition.Run(work, new NewEdition { Declared = RecordedDate.Read("2026-11-02"), Numberings = [NumberingPlan.Read("1-3"), NumberingPlan.Read("A/P I-I")] });
        register.GiveNumbers.AsPiled(edition, "1-3", null);
        register.GiveNumbers.AsPiled(edition, "A/P I-I", null);

        return work;
    }

    private void WorkOver(long work)
    {
        var sheet = register.LookAround.Work(work).Impressions.First(one => one.Standing == "left-out").ShownCode;
        register.WorkOver.Run(sheet, new WorkingOver { Title = WorkedOver, Technique = "woodcut, worked over in gouache" });
    }

    private static GradeGiven Grade(params IReadOnlyList<int> marks) => new()
    {
        Marks = GradeAspect.All.Zip(marks).ToDictionary(pair => pair.First, pair => pair.Second), Against = "guide-sheet",
    };

    private static ImpressionChoice Pile(long work, string pile) => new() { Work = work, Pile = pile };
}
