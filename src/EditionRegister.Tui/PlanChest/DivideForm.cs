using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.PlanChest;

/// <summary>Asks who is to have which numbers.</summary>
internal static class DivideForm
{
    private const string Numbers = "Numbers";
    private const string To = "To whom";
    private const string Agreed = "Agreed on";
    private const string Note = "Note";

    public static Form Of(Desk desk, long edition, Work? work, Suggested known) => new(work is null ? "Divide the edition" : $"Divide {Called.Edition(work, work.Editions.First(one => one.Id == edition))}", [
        NumberFateForm.Required(Fields.Ranges(Numbers, form: "such as 1-20, A/P I or B.A.T.")),
        NumberFateForm.Required(Fields.Known(To, known.People, "a name of the address book")),
        Fields.Today(Agreed, desk.Today),
        new Field(Note),
    ], form => SaveAsync(desk, edition, form))
    {
        Name = "Divide an edition",
        OwnEachTime = [Numbers, To, Note],
        About = ["What was agreed. It moves and sells nothing: whose a sheet is stays as it is until it is sold or given."],
    };

    private static async Task<Saved> SaveAsync(Desk desk, long edition, Form form)
    {
        var (numbers, who) = (form[Numbers]!, form[To]!);
        var sentence = await desk.Store.Do(register =>
        {
            var count = register.DivideEdition.Run(edition, numbers, who, Fields.DateOf(form[Agreed]), form[Note]);
            var (work, found) = register.LookAround.Edition(edition);

            return EditionSaid.Divided(work, found, count, Names.Of(register, who));
        });

        return new Saved(sentence)
        {
            Undo = new Undoing("the share", () => desk.Store.Do(register =>
            {
                var count = register.DivideEdition.TakeBack(edition, numbers);
                var (work, found) = register.LookAround.Edition(edition);

                return EditionSaid.Divided(work, found, count, null);
            })),
        };
    }
}
