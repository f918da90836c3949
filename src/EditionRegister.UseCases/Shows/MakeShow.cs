using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Shows;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Shows;

/// <summary>Records an exhibition, sale or fair, with nothing listed for it yet.</summary>
public sealed class MakeShow(RegisterStore store)
{
    /// <summary>Answers the show's number.</summary>
    /// <exception cref="Domain.RefusedException">show-name-missing, show-kind-unknown or show-dates-crossed.</exception>
    public long Run(NewShow show) => store.Write("make-show", writing =>
    {
        var id = writing.NewId("show");
        show.Record(id, writing.On(Root.Show(id)));

        return id;
    });
}
