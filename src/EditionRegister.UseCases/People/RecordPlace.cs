using EditionRegister.Store;

namespace EditionRegister.UseCases.People;

/// <summary>Records a place, and the places around it that are not known yet, from a path like "Studio › Plan chest › Drawer 3".</summary>
public sealed class RecordPlace(RegisterStore store)
{
    /// <summary>Answers the id of the innermost place; a place known already is left as it is.</summary>
    /// <exception cref="Domain.RefusedException">place-missing.</exception>
    public long Run(string path, long? keeper = null, string? note = null) => store.Write("record-place", writing =>
    {
        var names = Places.Split(path);

        if (names.Count == 0)
        {
            throw PeopleRefusals.PlaceEmpty();
        }

        return new PlacesOnTheWay(writing).Find(names, keeper, note);
    });
}
