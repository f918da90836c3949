using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Words;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.PlanChest;

/// <summary>What is asked of a word of the register's own.</summary>
internal static class OwnWordForms
{
    private const string Word = "Word";
    private const string Mark = "Mark";
    private const string Name = "Name";
    private const string Aat = "Thesaurus id";
    private const string InSize = "In the edition size";
    private const string InTotal = "In the total";
    private const string ForSale = "For sale by custom";

    public static Form NewKind(Desk desk) => new("Make a kind of numbering", [
        new Field(Word) { IsNeeded = true, Form = "for the register, for ever: small letters and hyphens, such as lettered" },
        .. OfKind(null),
    ], async form => new Saved(await desk.Store.Do(register =>
    {
        register.AddKind.Run(new NewKind { Word = form[Word]!, Mark = form[Mark]!, Name = form[Name]!, InSize = form.IsYes(InSize), InTotal = form.IsYes(InTotal), ForSale = form.IsYes(ForSale) });

        return Said(register, "made", form[Word]!);
    })))
    {
        About = ["A kind nobody else needs: an edition beside the edition, copies with letters, a number pencilled twice."],
        Caution = "What it counts in is settled once a numbering is of this kind.",
    };

    public static Form EditKind(Desk desk, NumberingKind kind) => new($"Change the kind {kind.Word}", OfKind(kind), async form => new Saved(await desk.Store.Do(register =>
    {
        register.EditKind.Run(kind.Word, new KindCorrection { Mark = form[Mark], Name = form[Name], InSize = form.IsYes(InSize), InTotal = form.IsYes(InTotal), ForSale = form.IsYes(ForSale) });

        return Said(register, "changed", kind.Word);
    }))
    {
        Undo = new Undoing("the change of the kind", () => desk.Store.Do(register =>
        {
            register.EditKind.Run(kind.Word, new KindCorrection { Mark = kind.Mark, Name = kind.Name, InSize = kind.InSize, InTotal = kind.InTotal, ForSale = kind.ForSale });

            return Said(register, "changed", kind.Word);
        })),
    })
    {
        Name = "Change a kind",
        OwnEachTime = [Mark, Name],
    };

    public static Form NewFault(Desk desk) => new("Add a fault", [
        new Field(Word) { IsNeeded = true, Form = "for the register, for ever: small letters and hyphens, such as halo" },
        new Field(Name) { IsNeeded = true, Form = "as it is said: oil halo" },
    ], async form => new Saved(await desk.Store.Do(register =>
    {
        register.AddFault.Run(new NewFault(form[Word]!, form[Name]!));

        return WordsSaid.Fault(form[Word]!, form[Name]!);
    })));

    public static Form NewTechnique(Desk desk) => new("Add a technique", [
        new Field(Word) { IsNeeded = true, Form = "for the register, for ever: small letters and hyphens, such as plaster-print" },
        new Field(Name) { IsNeeded = true, Form = "as it is said and written: plaster print" },
        new Field(Aat) { Form = "its figures in the Getty thesaurus, looked up there by its label; or empty" },
    ], async form => new Saved(await desk.Store.Do(register =>
    {
        register.AddTechnique.Run(new NewTechnique(form[Word]!, form[Name]!, form[Aat]));

        return WordsSaid.Technique(form[Word]!, form[Name]!);
    })));

    private static Field[] OfKind(NumberingKind? kind) =>
    [
        new(Mark, kind?.Mark ?? "") { IsNeeded = true, Form = OwnMark.Form },
        new(Name, kind?.Name ?? "") { IsNeeded = true, Form = "as papers say it, of one: lettered copy" },
        Field.YesNo(InSize, kind?.InSize ?? false),
        Field.YesNo(InTotal, kind?.InTotal ?? true),
        Field.YesNo(ForSale, kind?.ForSale ?? false),
    ];

    private static string Said(Register register, string deed, string word) => WordsSaid.Kind(deed, register.LookAround.OwnWords().Kind(word)!);
}
