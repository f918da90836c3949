using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Wording;

/// <summary>The whole name of someone who was named in part or by number.</summary>
public static class Names
{
    /// <exception cref="Domain.RefusedException">person-not-found or person-ambiguous.</exception>
    public static string Of(Register register, string who)
    {
        var book = register.LookAround.Book();

        return book.NameOf(Persons.Find(book, who));
    }
}
