using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Works;

/// <summary>Names people who had a part in a work recorded before.</summary>
public sealed class JoinWork(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">work-not-found, person-not-found, role-unknown, role-held-already.</exception>
    public bool Run(long work, IReadOnlyList<Contributor> contributors) => store.Write("join-work", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var deed = writing.On(Root.Work(work));

        foreach (var contributor in contributors)
        {
            var role = Role.Of(contributor.Role) ?? throw WorkRefusals.UnknownRole(contributor.Role);
            var person = Persons.Find(writing.Read.Book, contributor.Who);

            if (found.Roles.Any(held => held.Person == person && held.Role == role.Word))
            {
                throw WorkRefusals.RoleHeld(found, writing.Read.Book.NameOf(person), role);
            }

            NewWork.Join(work, person, role, found.Roles.Count(held => held.Role == role.Word) + 1, deed);
        }

        return true;
    });
}
