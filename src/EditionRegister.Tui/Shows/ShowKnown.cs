using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Shows;

/// <summary>What the register knows that the form of a show may mean: places and people, those used most first.</summary>
internal sealed record ShowKnown(IReadOnlyList<string> Places, IReadOnlyList<string> People)
{
    public static Task<ShowKnown> ReadAsync(Desk desk) => desk.Store.Do(register =>
    {
        var suggested = register.LookAround.Suggestions();

        return new ShowKnown(suggested.Places, suggested.People);
    });
}
