using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Stock;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Stock;

/// <summary>Works that lines of a stock-take are about, each read once.</summary>
internal sealed class WorksAtHand(Reader reader)
{
    private readonly Dictionary<long, Work> _works = [];

    public Work Work(long id)
    {
        if (!_works.TryGetValue(id, out var work))
        {
            _works[id] = work = reader.WorkOrRefuse(id);
        }

        return work;
    }

    public Impression? Sheet(StockThing thing) => thing.Impression is { } id ? Work(thing.Work).Impressions.FirstOrDefault(sheet => sheet.Id == id) : null;

    public Matrix? Matrix(StockThing thing) => thing.Matrix is { } id ? Work(thing.Work).Matrices.FirstOrDefault(matrix => matrix.Id == id) : null;

    /// <summary>“Harbour” 3/12; “Harbour”, block.</summary>
    public string Called(StockThing thing)
    {
        var work = Work(thing.Work);

        return Sheet(thing) is { } sheet ? $"{Wording.Called.Work(work)} {work.NumberOf(sheet)}"
            : Matrix(thing) is { } matrix ? $"{Wording.Called.Work(work)}, {matrix.Called}{(matrix.Part is { } part ? $" ({part})" : "")}"
            : Wording.Called.Work(work);
    }

    /// <summary>Where the register has it by now.</summary>
    public string Where(StockThing thing)
    {
        var work = Work(thing.Work);

        return Sheet(thing) is { } sheet ? Domain.Chains.WhereInWords.Of(work, sheet)
            : Matrix(thing) is not { } matrix ? "nobody knows where"
            : matrix.Keeper is { } keeper ? $"with {work.Book.NameOf(keeper)}"
            : matrix.Place is { } place ? $"in {work.Book.PathOf(place)}"
            : "nobody said where";
    }
}
