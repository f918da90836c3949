using EditionRegister.Domain.Conditions;

namespace EditionRegister.UseCases.Looking;

public sealed partial class LookAround
{
    /// <summary>Every word there is for what can be the matter with a sheet, the register's own last.</summary>
    public IReadOnlyList<ConditionTerm> ConditionTerms() => store.Read(reader => reader.ConditionTerms());
}
