namespace EditionRegister.Domain.Works;

/// <summary>What someone did for a work.</summary>
public sealed record Role(string Word, string Name)
{
    public static Role Maker { get; } = new("maker", "maker");

    public static Role Printer { get; } = new("printer", "printer");

    public static Role Workshop { get; } = new("workshop", "workshop");

    /// <summary>Acts for a maker who is dead: what is pulled then is the estate's.</summary>
    public static Role Estate { get; } = new("estate", "estate");

    public static IReadOnlyList<Role> All { get; } =
        [Maker, Printer, Workshop, new("publisher", "publisher"), Estate, new("teacher", "teacher")];

    public static Role? Of(string? word) => All.FirstOrDefault(role => role.Word == word);
}
