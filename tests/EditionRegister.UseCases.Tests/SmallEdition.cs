using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests;

/// <summary>“Harbour”, a lino block, five pulls kept, declared 1-4 and A/P I, numbered as piled; nothing is signed yet.</summary>
internal static class SmallEdition
{
    public const long Work = 1;
    public const long Edition = 1;

    public static Register Make(Register register, string reduction = "no")
    {
        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        register.RecordPlace.Run("Studio › Drawer 1");
        register.RecordWork.Run(new NewWork { Title = "Harbour" }, ["Mira Tolland"]);
        register.RecordMatrix.Run(Work, "block", "lino", reduction, RecordedDate.Read("2026-01"));
        register.RecordPrintRun.Run(Work, new NewPrintRun { Started = 6, Spoiled = 1, Printed = RecordedDate.Read("2026-02-01") }, "Drawer 1");
        register.SortPulls.Run(new ImpressionChoice { Work = Work, Pile = "1-5" }, "kept");
        register.DeclareEdition.Run(Work, new NewEdition { Numberings = [NumberingPlan.Read("1-4"), NumberingPlan.Read("A/P I-I")] });
        register.GiveNumbers.AsPiled(Edition, null, null);
        register.GiveNumbers.AsPiled(Edition, "A/P I-I", null);

        return register;
    }

    public static ImpressionChoice Numbers(string numbers) => new() { Edition = Edition, Sheets = numbers };

    /// <summary>The sheet that has the number.</summary>
    public static Domain.Impressions.Impression Sheet(this Register register, int number) =>
        register.LookAround.Work(Work).Impressions.First(sheet => sheet.Number == number);
}
