using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>Somebody named in a form who may be new to the address book, and is then recorded in the same go.</summary>
internal static class Newcomer
{
    public const string InTheBook = "in the book";
    public const string NobodyKnows = "nobody knows";
    private const string Person = "new person";
    private const string Organisation = "new organisation";

    /// <summary>Whether the one named stands in the address book.</summary>
    /// <param name="label">How the field is called.</param>
    /// <param name="name">The field for the name.</param>
    /// <param name="mayBeUnknown">Where nobody may know who it is; then the name stays empty.</param>
    public static Field Field(string label, Field name, bool mayBeUnknown)
    {
        string[] words = mayBeUnknown ? [InTheBook, Person, Organisation, NobodyKnows] : [InTheBook, Person, Organisation];

        return new Field(label, words[0])
        {
            Words = words,
            Form = string.Join(" · ", words),
            Wrong = word => word == NobodyKnows && name.Answer is { } known ? $"{name.Label} is “{known}”, so somebody knows: choose another answer, or empty {name.Label}." : null,
        };
    }

    /// <summary>Records the one named where they are new, does the deed, and says what of the two was recorded.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="form">The form they are named in.</param>
    /// <param name="name">The field for the name.</param>
    /// <param name="isNew">The field of <see cref="Field"/>; set to in the book once they are.</param>
    /// <param name="deed">What is done then; answers in sentences.</param>
    /// <exception cref="RefusedException">What the register refused; that they were recorded all the same stands before it.</exception>
    public static async Task<Saved> ThenAsync(Desk desk, Form form, Field name, Field isNew, Func<Task<Saved>> deed)
    {
        if (name.Answer is null && isNew.Text != NobodyKnows)
        {
            // Not marked as wrong from the start: whoever opens the form has not had a chance yet.
            form.At = form.Fields.ToList().IndexOf(name);
            throw new RefusedException(PeopleRefusals.NoName().Name, $"{name.Label} is needed: a name, or choose “{NobodyKnows}” under it. Nothing was changed.");
        }

        if (isNew.Text is not (Person or Organisation))
        {
            return await deed();
        }

        NewPerson person = new() { Name = name.Answer!, IsOrganisation = isNew.Text == Organisation };
        var id = await desk.Store.Do(register => register.RecordPerson.Run(person));
        var recorded = $"{person.Name} is in the address book, as person {Counted.Figure(id)}.";
        isNew.Text = InTheBook;

        try
        {
            var saved = await deed();

            return saved with { Sentence = $"{recorded} {saved.Sentence}" };
        }
        catch (RefusedException refusal)
        {
            throw AllTheSame.Refused(recorded, refusal);
        }
    }
}
