using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Tui.Bench;

/// <summary>One line of a work's page: a print run, what it is printed from, or an edition.</summary>
internal sealed record WorkRow(string What, string Which, string HowItStands)
{
    public PrintRun? Run { get; init; }

    public Matrix? Matrix { get; init; }

    public Edition? Edition { get; init; }

    public IReadOnlyList<string> Cells => [What, Which, HowItStands];

    /// <param name="work">The work whole.</param>
    /// <param name="sizes">How sizes are written.</param>
    public static IReadOnlyList<WorkRow> Of(Work work, SizeStyle sizes) =>
    [
        .. work.Runs.OrderByDescending(run => run.Ordinal).Select(run => Of(work, run, sizes)),
        .. work.Matrices.Select(Of),
        .. work.Editions.Select(edition => Of(work, edition)),
    ];

    private static WorkRow Of(Work work, PrintRun run, SizeStyle sizes) => new(
        $"Print run {Counted.Figure(run.Ordinal)}",
        Joined(
            run.Printed.Text,
            run.Purpose is "edition" ? null : Called.Plain(run.Purpose),
            run.Paper,
            run.State is { } state ? $"state {state}" : null,
            SizesShown.Show(run.ImageHeight, run.ImageWidth, sizes) is { } image ? $"image {image}" : null,
            SizesShown.Show(run.SheetHeight, run.SheetWidth, sizes) is { } sheet ? $"sheet {sheet}" : null,
            run.Note),
        HowFar.Of(work, run)) { Run = run };

    private static WorkRow Of(Matrix matrix) => new(
        $"{char.ToUpperInvariant(matrix.Called[0])}{matrix.Called[1..]} {Counted.Figure(matrix.Id)}",
        Joined(matrix.Part, matrix.NewestState is { } state ? $"state {state.Name}" : null, matrix.Material, matrix.IsReduction ? "a reduction" : null, matrix.Made.IsKnown ? $"made {matrix.Made}" : null, matrix.FateNote),
        matrix.Fate == "undecided" ? "fate not decided yet" : matrix.FateDate.IsKnown ? $"{Called.Plain(matrix.Fate)}, {matrix.FateDate}" : Called.Plain(matrix.Fate)) { Matrix = matrix };

    private static WorkRow Of(Work work, Edition edition) => new(
        $"Edition {Counted.Figure(edition.Id)}",
        $"{edition.Kind}: {Called.Spans(edition)}",
        HowFar.Of(edition, work.Impressions)) { Edition = edition };

    private static string Joined(params IEnumerable<string?> parts) => string.Join(", ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));
}
