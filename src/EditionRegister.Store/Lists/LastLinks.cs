namespace EditionRegister.Store.Lists;

/// <summary>Finds the sheet a link belongs to, and whether it is the last link of its chain so far. Links may come in any order; mostly they come in that of the sheets.</summary>
internal sealed class LastLinks(long[] sheets, int count)
{
    private readonly long[] _ordinals = new long[count];
    private int _at;

    /// <summary>The sheet's place in the list; -1 for a link of no sheet there, or of one that has a later link.</summary>
    public int Takes(long sheet, long ordinal)
    {
        var place = Find(sheet);

        if (place < 0 || _ordinals[place] > ordinal)
        {
            return -1;
        }

        _ordinals[place] = ordinal;

        return place;
    }

    private int Find(long sheet)
    {
        for (var ahead = 0; ahead < 2; ahead++)
        {
            if (_at + ahead < count && sheets[_at + ahead] == sheet)
            {
                return _at += ahead;
            }
        }

        var found = Array.BinarySearch(sheets, 0, count, sheet);
        _at = found >= 0 ? found : _at;

        return found;
    }
}
