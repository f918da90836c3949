namespace EditionRegister.Domain.Works;

/// <summary>What someone did for a work.</summary>
public sealed record Role(string Word, string Name)
{
    public static Role Maker { get; } = new("maker", "maker");

    public static Role Printer { get; } = new("printer", "printer");

    public static Role Workshop { get; } = new("workshop", "workshop");

    public static IReadOnlyList<Role> All { get; } =
        [Maker, Printer, Workshop, new("publisher", "publisher"), new("estate", "estate"), new("teacher", "teacher")];

    public static Role? Of(string? word) => All.FirstOrDefault(role => role.Word == word);
}
