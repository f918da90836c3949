using System.Globalization;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Looking;

/// <summary>A stock-take, delivery or return as it stands by now.</summary>
/// <param name="Take">As recorded.</param>
/// <param name="Path">Where.</param>
/// <param name="By">By whom, or null where nobody said.</param>
/// <param name="Lines">Code by code.</param>
public sealed record StockTakeSeen(StockTake Take, string Path, string? By, IReadOnlyList<StockLineSeen> Lines)
{
    public int Open => Lines.Count(line => line.IsOpen);

    public int Count(string outcome) => Lines.Count(line => line.Outcome == outcome);
}

/// <summary>What should lie in a place, for someone who is about to count it.</summary>
/// <param name="Place">The place.</param>
/// <param name="Path">The way to it.</param>
/// <param name="Things">What bears a code there.</param>
public sealed record StockToCount(long Place, string Path, IReadOnlyList<StockNamed> Things);

/// <summary>One thing with a code, as a person calls it, and where the register has it.</summary>
public sealed record StockNamed(StockThing Thing, string Code, string Called, string Where);

/// <summary>What is out with someone by now.</summary>
public sealed record StockAway(long Person, string Name, IReadOnlyList<StockNamed> Things);

public sealed partial class LookAround
{
    /// <summary>What is out with someone, for counting what comes back.</summary>
    /// <exception cref="Domain.RefusedException">person-not-found, person-ambiguous or nothing-awaited.</exception>
    public StockAway StockAwayWith(string who) => store.Read(reader =>
    {
        var person = Persons.Find(reader.Book, who);
        WorksAtHand works = new(reader);
        var things = reader.StockWith(person).Select(thing => Named(works, thing)).ToList();

        return things.Count == 0 ? throw StockRefusals.NothingAwaited(reader.Book.NameOf(person)) : new StockAway(person, reader.Book.NameOf(person), things);
    });

    /// <summary>Every stock-take, delivery and return of one place, newest first.</summary>
    public IReadOnlyList<StockTakeSeen> StockTakesOf(long place) => store.Read(reader =>
    {
        StockLines lines = new(reader, new WorksAtHand(reader));

        return reader.StockTakes(place).Select(take => Seen(reader, lines, take)).ToList();
    });

    /// <summary>Every stock-take, delivery and return, newest first; only those of a place where one is named.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found.</exception>
    public IReadOnlyList<StockTakeSeen> StockTakes(string? place = null) => store.Read(reader =>
    {
        StockLines lines = new(reader, new WorksAtHand(reader));

        return reader.StockTakes(place is null ? null : UseCases.People.Places.Find(reader.Book, place)).Select(take => Seen(reader, lines, take)).ToList();
    });

    /// <exception cref="Domain.RefusedException">stock-take-not-found.</exception>
    public StockTakeSeen StockTake(long id) => store.Read(reader =>
        Seen(reader, new StockLines(reader, new WorksAtHand(reader)), reader.StockTake(id) ?? throw StockRefusals.NoSuchTake(id)));

    /// <summary>What should lie in a place, and in those inside it unless it alone is meant.</summary>
    /// <exception cref="Domain.RefusedException">place-not-found.</exception>
    public StockToCount StockToCount(long place, bool alone) => store.Read(reader =>
    {
        if (!reader.Book.Places.ContainsKey(place))
        {
            throw PeopleRefusals.PlaceNotFound(place.ToString(CultureInfo.InvariantCulture));
        }

        WorksAtHand works = new(reader);

        return new StockToCount(place, reader.Book.PathOf(place), [.. reader.StockIn(alone ? [place] : [.. UseCases.People.Places.Within(reader.Book, place)]).Select(thing => Named(works, thing))]);
    });

    /// <summary>What bears a code; null where this register never gave it.</summary>
    public StockNamed? StockOf(RegisterCode code) => store.Read(reader => reader.StockOf(code.Text) is { } thing ? Named(new WorksAtHand(reader), thing) : null);

    private static StockNamed Named(WorksAtHand works, StockThing thing) => new(
        thing, RegisterCode.TryParse(thing.Code, out var code) ? code.ToString() : thing.Code, works.Called(thing), works.Where(thing));

    private static StockTakeSeen Seen(Store.Reading.Reader reader, StockLines lines, StockTake take) => new(
        take, reader.Book.PathOf(take.Place), take.Person is { } person ? reader.Book.NameOf(person) : null, lines.Of(take));
}
