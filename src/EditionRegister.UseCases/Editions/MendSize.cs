using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>Mends a size declared by mistake, while no sheet is signed or has left.</summary>
public sealed class MendSize(RegisterStore store)
{
    /// <param name="edition">The edition.</param>
    /// <param name="plan">The numbering as it should have been declared.</param>
    public bool Run(long edition, NumberingPlan plan) => store.Write("mend-size", writing =>
    {
        var (work, found) = writing.Read.EditionOrRefuse(edition);
        var numbering = NumberGiving.Named(work, found, plan.Kind, plan.Notation, plan.Name, plan.ToString());
        NumberingDeeds.MendSize(work, found, numbering, plan.Size ?? throw EditionRefusals.NumberingNotRead(plan.ToString()), writing.On(Root.Work(work.Id)));

        return true;
    });
}
