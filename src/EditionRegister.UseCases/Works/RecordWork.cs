using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Records a work with its makers and whoever else had a part in it.</summary>
public sealed class RecordWork(RegisterStore store)
{
    /// <param name="work">The work; its makers are taken from <paramref name="makers"/>.</param>
    /// <param name="makers">Names or numbers from the address book.</param>
    /// <param name="contributors">Printers, workshops, publishers.</param>
    /// <exception cref="Domain.RefusedException">title-missing, maker-missing, person-not-found, role-unknown.</exception>
    public long Run(NewWork work, IReadOnlyList<string> makers, IReadOnlyList<Contributor>? contributors = null) => store.Write("record-work", writing =>
    {
        var book = writing.Read.Book;
        var id = writing.NewId("work");
        var deed = writing.On(Root.Work(id));
        (work with { Makers = [.. makers.Select(who => Persons.Find(book, who))] }).Record(id, writing.Read.OwnWords, deed);

        foreach (var (contributor, ordinal) in (contributors ?? []).Select((contributor, i) => (contributor, i + 1)))
        {
            var role = Role.Of(contributor.Role) ?? throw WorkRefusals.UnknownRole(contributor.Role);
            NewWork.Join(id, Persons.Find(book, contributor.Who), role, ordinal, deed);
        }

        return id;
    });
}
