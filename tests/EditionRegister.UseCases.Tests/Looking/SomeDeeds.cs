using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>Deeds on top of the demo that touch everything lists show: names in other scripts, two editions of one work, places, consigned and sold sheets.</summary>
internal static class SomeDeeds
{
    public static void DoAll(Register register)
    {
        foreach (var deed in Of(register))
        {
            deed();
        }
    }

    /// <summary>One of everything that shows in the chest.</summary>
    public static IEnumerable<Action> Of(Register register)
    {
        long work = 0, edition = 0;

        yield return () => register.RecordPerson.Run(new NewPerson { Name = "Łucja Ébène-Żuk", ClassCode = "7B-12" });
        yield return () => work = register.RecordWork.Run(new NewWork { Title = "雨の港 Étude" }, ["ebene"]);
        yield return () => register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 9 });
        yield return () => register.SortPulls.Run(new ImpressionChoice { Work = work, Pile = "1-8" }, "kept");
        yield return () => edition = register.DeclareEdition.Run(work, new NewEdition { Numberings = [NumberingPlan.Read("1-4")] });
        yield return () => register.DeclareEdition.Run(work, new NewEdition { Kind = "varied", IsSecond = true, Numberings = [NumberingPlan.Read("I-III")] });
        yield return () => register.GiveNumbers.AsPiled(edition, null, null);
        yield return () => register.RecordPlace.Run("Größe › Fach 9");
        yield return () => register.PutAway.Run(new ImpressionChoice { Edition = edition, Sheets = "1-2" }, "Fach 9", RecordedDate.Read("2026-12"));
        yield return () => register.RecordPerson.Run(new NewPerson { Name = "Quay & Tide", IsOrganisation = true });
        yield return () => register.Consign.Run(new ImpressionChoice { Edition = edition, Sheets = "3" }, "quay & tide", until: RecordedDate.Read("2027-03"), rate: 4_000);
        yield return () => register.SellImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "4" }, new SalePeople("quay & tide"), new Sale());
        yield return () => register.RecordWork.Run(new NewWork { TitleUnknown = true, MakerUnknown = true }, []);
        yield return () => register.RecordWork.Run(new NewWork { Untitled = true }, ["ebene", "tolland"]);
        yield return () => register.EditPerson.Run("ebene", new PersonCorrection { Name = "Ada Ébène" });
        yield return () => register.EditWork.Run(work, "Regenhafen", null, "woodcut");
    }
}
