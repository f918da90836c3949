using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Tests.PlanChest;

/// <summary>An invented studio whose editions are the odd ones: not yet numbered, of two numberings, printed twice, half known, someone else's, very large, and not declared.</summary>
internal static class SmallStudio
{
    public const string WideTitle = "海の版画と港の灯り、冬の朝に – דף ראשון";

    /// <summary>“Mole End”: nine pulls, five kept, one spare, one left out, one held out, one not sorted; 1-6 and A/P A-B declared, nothing numbered.</summary>
    public static long Unnumbered(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = "Mole End", Year = RecordedDate.Read("2027"), Technique = "linocut" }, ["Mira Tolland"]);
        register.RecordMatrix.Run(work, "block", "lino", "no", RecordedDate.None);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 9 }, "Drawer 1");
        register.SortPulls.Run(Pile(work, "1-5"), "kept");
        register.SortPulls.Run(Pile(work, "6"), "spare");
        register.SortPulls.Run(Pile(work, "7"), "left-out", "slur");
        register.SortPulls.Run(Pile(work, "8"), "held-out");

        return register.Declared(work, new NewEdition { Declared = RecordedDate.Read("2027-02"), Numberings = Plans("1-6", "A/P A-B") });
    }

    /// <summary>A title two columns a letter and from right to left; 1-40 and I-X side by side, and a second edition of five.</summary>
    public static (long First, long Second) PrintedTwice(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = WideTitle }, ["Åsa Ørnevik"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 52 }, "Drawer 1");
        register.SortPulls.Run(Pile(work, "1-52"), "kept");
        var first = register.Declared(work, new NewEdition { Numberings = Plans("1-40", "I-X") });
        register.GiveNumbers.AsPiled(first, null, Pile(work, "1-40"));
        register.GiveNumbers.AsPiled(first, "I-X", Pile(work, "41-50"));
        var second = register.Declared(work, new NewEdition { Numberings = Plans("1-5"), IsSecond = true });

        return (first, second);
    }

    /// <summary>“Old Friends”: twenty of ours of which two are here, and nobody knows of the others.</summary>
    public static long PartlyKnown(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = "Old Friends" }, ["Mira Tolland"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 2 }, "Drawer 1");
        register.SortPulls.Run(Pile(work, "1-2"), "kept");
        var edition = register.Declared(work, new NewEdition { Extent = "partly-known", Numberings = Plans("1-20") });
        register.GiveNumbers.ByHand(edition, Pile(work, "1-2"), "4, 17");

        return edition;
    }

    /// <summary>“Guest Room”: one sheet of fifty, printed by someone else.</summary>
    public static long SomeoneElses(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = "Guest Room" }, ["Åsa Ørnevik"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 1 }, "Drawer 1");
        register.SortPulls.Run(Pile(work, "1"), "kept");
        var edition = register.Declared(work, new NewEdition { Extent = "someone-elses", Numberings = Plans("1-50") });
        register.GiveNumbers.ByHand(edition, Pile(work, "1"), "7");

        return edition;
    }

    /// <summary>“Thousand”: a thousand numbers, of which the first hundred and fifty have their sheets.</summary>
    public static long Thousand(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = "Thousand" }, ["Mira Tolland"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 150 }, "Drawer 1");
        register.SortPulls.Run(Pile(work, "1-150"), "kept");
        var edition = register.Declared(work, new NewEdition { Numberings = Plans("1-1000") });
        register.GiveNumbers.AsPiled(edition, null, null);

        return edition;
    }

    /// <summary>“Weir”: three pulls, and no edition declared.</summary>
    public static long Undeclared(this Register register)
    {
        register.People();
        var work = register.RecordWork.Run(new NewWork { Title = "Weir", Year = RecordedDate.Read("2027") }, ["Åsa Ørnevik"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 3 }, "Drawer 1");

        return work;
    }

    public static ImpressionChoice Pile(long work, string pile) => new() { Work = work, Pile = pile };

    public static ImpressionChoice Numbers(long edition, string numbers) => new() { Edition = edition, Sheets = numbers };

    private static void People(this Register register)
    {
        if (register.LookAround.Book().People.Count > 0)
        {
            return;
        }

        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        register.RecordPerson.Run(new NewPerson { Name = "Åsa Ørnevik" });
        register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        register.RecordPlace.Run("Studio › Drawer 1");
    }

    private static long Declared(this Register register, long work, NewEdition edition) => register.DeclareEdition.Run(work, edition);

    private static NumberingPlan[] Plans(params string[] plans) => [.. plans.Select(NumberingPlan.Read)];
}
