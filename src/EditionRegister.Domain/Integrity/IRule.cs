using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>A sentence that should be true of every work. Pure and complete: it lists everything that speaks against it, and meets damaged data without throwing.</summary>
public interface IRule
{
    /// <summary>Permanent: what checks print and what accepted findings are kept under.</summary>
    string Name { get; }

    string Sentence { get; }

    /// <summary>The published source the rule rests on, or that it is common practice or arithmetic.</summary>
    string Basis { get; }

    IEnumerable<Finding> Check(Work work);
}
