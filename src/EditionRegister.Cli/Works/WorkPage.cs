using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>One work whole, for people.</summary>
internal static class WorkPage
{
    private static readonly Column[] MatrixColumns = [new("id", IsRight: true), new("what"), new("part"), new("code"), new("material"), new("reduction"), new("made"), new("states"), new("fate"), new("when"), new("note")];
    private static readonly Column[] RunColumns = [new("run", IsRight: true), new("purpose"), new("printed"), new("paper"), new("state"), new("image"), new("sheet"), new("sheets counted")];
    private static readonly Column[] PassColumns = [new("pass", IsRight: true), new("done"), new("what"), new("sheets")];
    private static readonly Column[] EditionColumns = [new("edition", IsRight: true), new("kind"), new("whose"), new("declared"), new("closed"), new("numberings")];

    public static void Print(Printer printer, Work work, SizeStyle sizes)
    {
        printer.Line($"Work {Counted.Figure(work.Id)}: {Called.Work(work)}");
        printer.Line();
        printer.Facts([.. Head(work)]);
        printer.Section("Printed from:", MatrixColumns, [.. work.Matrices.Select(Row)]);
        printer.Section("Print runs:", RunColumns, [.. work.Runs.Select(run => Row(work, run, sizes))]);

        foreach (var run in work.Runs.Where(run => run.Passes.Count > 0))
        {
            printer.Section($"Passes of print run {Counted.Figure(run.Ordinal)}:", PassColumns, [.. run.Passes.Select(pass => (string[])[Counted.Figure(pass.Ordinal), pass.Done.Text ?? "", PassText.What(work, pass), PassText.Counts(work, pass)])]);
        }

        printer.Section("Editions:", EditionColumns, [.. work.Editions.Select(Row)]);
    }

    private static IEnumerable<(string, string?)> Head(Work work) =>
    [
        ("Maker", work.ShownMaker),
        .. from role in work.Roles
           where role.Role != Role.Maker.Word
           select (Capital(Role.Of(role.Role)?.Name ?? role.Role), (string?)work.Book.NameOf(role.Person)),
        ("Year", work.Year.InOtherWords is { } read ? $"{work.Year} ({read})" : work.Year.ToString()),
        ("Technique", work.Technique ?? "not known"),
        ("Read as", work.TechniqueRead),
        ("Worked over from", ImpressionFacts.WorkedOver(work)),
        ("Worked over into", WorkedInto(work)),
        ("Set", work.Set is { } set ? $"{SetForm.NameOf(set.Form)} of {Counted.Of(set.Parts.Count, "part")}, {SetsSaid.SignedOn(set.SignedOn)}" : null),
        ("Note", work.Note),
        ("Sheets", Standings(work)),
        ("Last written by entry", Counted.Figure(work.V)),
    ];

    private static string? WorkedInto(Work work)
    {
        var into = work.Impressions.Select(sheet => sheet.WorkedInto).OfType<WorkedInto>().Select(one => $"work {Counted.Figure(one.Work)}, “{one.Title}”").ToList();

        return into.Count == 0 ? null : string.Join("; ", into);
    }

    private static string Standings(Work work) => work.Impressions.Count == 0
        ? "none"
        : $"{Counted.Figure(work.Impressions.Count)}: {string.Join(", ", work.Impressions.GroupBy(sheet => sheet.Standing).Select(same => $"{Counted.Figure(same.Count())} {Called.Plain(same.Key)}"))}";

    private static string[] Row(Matrix matrix) =>
    [
        Counted.Figure(matrix.Id), matrix.Called, matrix.Part ?? "", matrix.ShownCode ?? "", matrix.Material ?? "", matrix.Reduction, matrix.Made.ToString(), string.Join(", ", matrix.States.Select(state => state.Name)), Called.Plain(matrix.Fate), matrix.FateDate.Text ?? "", matrix.FateNote ?? "",
    ];

    private static string[] Row(Work work, PrintRun run, SizeStyle sizes) =>
    [
        Counted.Figure(run.Ordinal), run.Purpose, run.Printed.ToString(), run.Paper ?? "", run.State ?? "",
        SizesShown.Show(run.ImageHeight, run.ImageWidth, sizes) ?? "", SizesShown.Show(run.SheetHeight, run.SheetWidth, sizes) ?? "", RunBalance.Of(work, run),
    ];

    private static string[] Row(Edition edition) =>
    [
        Counted.Figure(edition.Id), edition.Kind, Called.Extent(edition.Extent), edition.Declared.ToString(),
        edition.IsClosed ? edition.ClosedOn.ToString() : edition.Closed, string.Join("; ", edition.Numberings.Select(numbering => numbering.Span)),
    ];

    private static string Capital(string word) => word.Length == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..];
}
