using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Sheets;

/// <summary>A place typed into a form that the register does not know: whether it is to be made, asked before anything is saved.</summary>
internal static class NewPlace
{
    /// <summary>Does the deed; where the place is not known, asks whether to make it first.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="form">The form with the place.</param>
    /// <param name="typed">The place as typed.</param>
    /// <param name="what">What is done there, for the question: “put 5 sheets there”.</param>
    /// <param name="deed">The deed, given the place.</param>
    /// <exception cref="RefusedException">What the register refused but for the place.</exception>
    public static async Task<Saved> OfferedAsync(Desk desk, Form form, string typed, string what, Func<string, Task<Saved>> deed)
    {
        try
        {
            return await deed(typed);
        }
        catch (RefusedException refusal) when (refusal.Name == "place-not-found")
        {
            var path = PathOf(await desk.Store.Do(register => register.LookAround.Book()), typed);

            return new Saved("", Ask(desk, form, typed, path, what, deed)) { IsHalfway = true };
        }
    }

    /// <summary>The whole path that is meant: what is known of it from the outside in, then the rest as typed.</summary>
    internal static string PathOf(Domain.People.AddressBook book, string typed)
    {
        var names = Places.Split(typed);

        for (var outer = names.Count - 1; outer > 0; outer--)
        {
            if (Find(book, string.Join(Domain.People.AddressBook.Inside, names.Take(outer))) is { } known)
            {
                return string.Join(Domain.People.AddressBook.Inside, names.Skip(outer).Prepend(book.PathOf(known)));
            }
        }

        return string.Join(Domain.People.AddressBook.Inside, names);
    }

    private static Question Ask(Desk desk, Form form, string typed, string path, string what, Func<string, Task<Saved>> deed) => new(
        $"There is no place “{typed}” yet. Make “{path}” and {what}?",
        [
            new Answer("y", "make it", () => MakeAsync(desk, form, path, deed)),
            new Answer("n", "go back to the form", () => Task.FromResult<Opening?>(form)),
        ])
    {
        Shown = path.Contains(Domain.People.AddressBook.Inside, StringComparison.Ordinal) ? [] : [(Line)"It stands by itself then. A place inside another", (Line)"is named from the outside in: Studio › Drawer 3."],
    };

    private static async Task<Opening?> MakeAsync(Desk desk, Form form, string path, Func<string, Task<Saved>> deed)
    {
        await desk.Store.Do(register => register.RecordPlace.Run(path));

        try
        {
            var saved = await deed(path);
            desk.Done(form, saved with { Sentence = $"{path} is a place now. {saved.Sentence}" });

            return saved.Next;
        }
        catch (RefusedException refusal)
        {
            throw AllTheSame.Refused($"{path} is a place now.", refusal);
        }
    }

    private static long? Find(Domain.People.AddressBook book, string path)
    {
        try
        {
            return Places.Find(book, path);
        }
        catch (RefusedException refusal) when (refusal.Name == "place-not-found")
        {
            return null;
        }
    }
}
