using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>The two chains of a sheet as tables, in the order in which they were recorded.</summary>
internal static class ChainTables
{
    public static IReadOnlyList<Column> WhereaboutsColumns { get; } = [new("step", IsRight: true), new("what"), new("when"), new("where"), new("terms and notes")];

    public static IReadOnlyList<Column> OwnershipColumns { get; } =
        [new("step", IsRight: true), new("what"), new("when"), new("whose"), new("price", IsRight: true), new("net", IsRight: true), new("sold by and notes")];

    public static IReadOnlyList<string>[] Whereabouts(Work work, Impression sheet) =>
    [
        .. sheet.Whereabouts.Select(link => (string[])
        [
            Counted.Figure(link.Ordinal),
            MoveKind.Of(link.Kind)?.Name ?? link.Kind,
            link.Moved.ToString(),
            WhereInWords.Of(work, link.To),
            Together(link.Until.IsKnown ? $"until {link.Until}" : null, link.Rate is { } rate ? $"their share {Counted.Share(rate)}" : null, link.Note),
        ]),
    ];

    public static IReadOnlyList<string>[] Ownership(Work work, Impression sheet) =>
    [
        .. sheet.Ownership.Select(link => (string[])
        [
            Counted.Figure(link.Ordinal),
            MoveKind.Of(link.Kind)?.Name ?? link.Kind,
            link.Passed.ToString(),
            WhereInWords.OwnerOf(work, link.To),
            PricesShown.Show(link.Price, link.Currency) ?? "",
            PricesShown.Show(link.Net, link.Currency) ?? "",
            Together(link.Agent is { } agent ? work.Book.NameOf(agent) : null, link.Note),
        ]),
    ];

    private static string Together(params string?[] parts) => string.Join(", ", parts.OfType<string>());
}
