using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Works;

/// <summary>Records what a work is printed from.</summary>
public sealed class RecordMatrix(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">work-not-found.</exception>
    public long Run(long work, string what, string? material, string reduction, RecordedDate made) => store.Write("record-matrix", writing =>
        MatrixDeeds.Record(writing.Read.WorkOrRefuse(work), what, material, reduction, made, writing.On(Root.Work(work))));
}
