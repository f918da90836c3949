using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Conditions;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Demo;

/// <summary>A sheet is lent to a museum, examined when it goes and when it comes back, with a crease and a corner it had not gone out with.</summary>
internal sealed class LoanWithDamage(Register register, ScenarioClock clock)
{
    public const string Museum = "Museum of the Westhaven Shore";

    private const string Number = "10";
    private const string Drawer = "Studio › Plan chest › Drawer 1";

    public void Tell()
    {
        clock.OnTo(2026, 11, 16);
        register.RecordPerson.Run(new NewPerson { Name = Museum, IsOrganisation = true });
        var edition = register.LookAround.Works().First(work => work.Title == CoastalStudio.Reduction).Editions[0].Id;
        ImpressionChoice lent = new() { Edition = edition, Sheets = Number };
        var scanned = ScanList.OfTyped(register.LookAround.Chosen(lent)[0].Sheets[0].ShownCode);

        Examine(lent, "2026-10-02", ConditionOccasion.GoingOut, "as pulled, but for one fingermark", "surface-dirt@lower margin: one fingermark");
        register.DeliverSheets.Run(
            new SheetsToDeliver { Place = Drawer, Going = lent, To = Museum, As = MoveKind.Lent, Date = On("2026-10-02"), Until = On("2026-11-15"), Person = CoastalStudio.Maker, Note = "for “Hands and Presses”" },
            scanned);
        register.ReceiveSheets.Run(new SheetsToReceive { Place = Drawer, From = Museum, Date = On("2026-11-14"), Person = CoastalStudio.Maker }, scanned);
        Examine(
            lent, "2026-11-14", ConditionOccasion.ComingBack, "handling crease and dented corner; the image is untouched",
            "surface-dirt@lower margin: one fingermark", "handling-crease@upper left: 40 mm, soft", "dented-corner@lower right: 3 mm");
    }

    private void Examine(ImpressionChoice sheet, string date, string occasion, string summary, params string[] remarks) => register.ReportCondition.Run(sheet, new ConditionToReport
    {
        Occasion = occasion,
        Date = On(date),
        Examiner = CoastalStudio.Maker,
        Summary = summary,
        Remarks = remarks,
        Condition = summary,
    });

    private static RecordedDate On(string date) => RecordedDate.Read(date);
}
