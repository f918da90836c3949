using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Sets;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Sets;

/// <summary>Says which works are the parts of a set, in their order.</summary>
public sealed class ChangeSetParts(RegisterStore store)
{
    /// <summary>Adds parts behind those there are, in the order given.</summary>
    /// <exception cref="Domain.RefusedException">work-not-found, set-not-made, part-there-already or part-holds-the-set.</exception>
    public void Add(long set, IReadOnlyList<long> parts) => store.Write("add-set-part", writing =>
    {
        var work = writing.Read.WorkOrRefuse(set);

        foreach (var part in parts.Distinct())
        {
            SetDeeds.AddPart(work, writing.Read.WorkOrRefuse(part), Holds(writing.Read, part, set), writing.On(Root.Work(set)));
        }

        return parts.Distinct().Count();
    });

    /// <exception cref="Domain.RefusedException">work-not-found, set-not-made, part-not-in-set or part-is-gathered.</exception>
    public void Remove(long set, long part) => store.Write("remove-set-part", writing =>
    {
        SetDeeds.RemovePart(writing.Read.WorkOrRefuse(set), writing.Read.WorkOrRefuse(part), writing.On(Root.Work(set)));

        return part;
    });

    /// <summary>Whether a work has another among its parts, or among theirs.</summary>
    private static bool Holds(Reader reader, long work, long other)
    {
        Queue<long> within = new(reader.SetsWithPart(other));
        HashSet<long> met = [];

        while (within.TryDequeue(out var set))
        {
            if (set == work)
            {
                return true;
            }

            foreach (var outer in met.Add(set) ? reader.SetsWithPart(set) : [])
            {
                within.Enqueue(outer);
            }
        }

        return false;
    }
}
