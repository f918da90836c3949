using EditionRegister.Domain.Reading.Search;
using EditionRegister.Store.Reading;

namespace EditionRegister.Store.Lists;

/// <summary>What is said of works in words that no column folds: the year and the technique as written. Read once for a list, and only where it is asked for.</summary>
internal sealed class WorksSaid(Reader reader)
{
    private readonly Lazy<IReadOnlyList<ListedTitle>> _titles = new(() => reader.Titles());

    public IEnumerable<long> InTechniques(SoughtPart part) => _titles.Value.Where(title => part.MeansTechniques(title.Techniques)).Select(title => title.Id);

    /// <summary>Works of whose year or technique a word is a part.</summary>
    public IEnumerable<long> Saying(SearchWord word) => word.Folded.Length < SaidOfWork.LeastLength ? []
        : _titles.Value.Where(title => SaidOfWork.Folded(title.Year, title.Technique).Contains(word.Folded, StringComparison.Ordinal)).Select(title => title.Id);
}
