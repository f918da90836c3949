using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Inventory;

/// <summary>
/// Where an impression comes in the inventory: by maker, title, kind, notation, number, code. Texts go by code point and not by language,
/// kinds in the order the register lists them, and sheets without a number come last; the code settles every tie.
/// </summary>
public sealed record InventoryPlace
{
    private readonly string _maker;
    private readonly string _title;
    private readonly (int Kind, int Notation, int Number) _number;
    private readonly string _code;

    private InventoryPlace(Work work, Impression impression)
    {
        var numbering = work.NumberingOf(impression);
        var says = numbering is null || impression.Number is null ? impression.Read(numbering?.Notation, work.OwnWords) : null;

        _maker = InventoryRow.MakerOf(work);
        _title = InventoryRow.TitleOf(work);
        _number = (
            Index(work.OwnWords.AllKinds, numbering?.Kind ?? says?.Kind),
            Index(Notation.All, numbering?.Notation ?? says?.Notation),
            impression.Number ?? says?.Number ?? int.MaxValue);
        _code = impression.Code;
    }

    public static InventoryPlace Of(Work work, Impression impression)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(impression);

        return new InventoryPlace(work, impression);
    }

    internal int CompareTo(InventoryPlace? other)
    {
        if (other is null)
        {
            return 1;
        }

        int[] steps =
        [
            string.CompareOrdinal(_maker, other._maker),
            string.CompareOrdinal(_title, other._title),
            _number.CompareTo(other._number),
            string.CompareOrdinal(_code, other._code),
        ];

        return steps.FirstOrDefault(step => step != 0);
    }

    private static int Index<T>(IReadOnlyList<T> all, T? one)
        where T : class
    {
        for (var at = 0; at < all.Count; at++)
        {
            if (all[at].Equals(one))
            {
                return at;
            }
        }

        return all.Count;
    }
}
