using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.Tui.Bench;

/// <summary>A pass as the answers of the form, and the answers as what is said of a pass.</summary>
internal static partial class PassForm
{
    /// <summary>A pass as the form would have been filled in.</summary>
    private static IEnumerable<(string Label, string Text)> Fill(Work work, Pass pass) =>
    [
        (Blocks, string.Join("; ", pass.Matrices.Select(used => Used(work, used)))),
        (Colours, pass.Colours is [var only] ? only.Colour : string.Join("; ", pass.Colours.Select(one => one.Ink is { } ink ? $"{one.Colour}={ink}" : one.Colour))),
        (Ink, pass.Colours is [{ Ink: { } of }] ? of : ""),
        (Manner, PassKinds.Plain(pass.Colours is [var first, ..] ? first.Manner : "flat")),
        (Who, string.Join("; ", pass.People.Select(one => work.Book.NameOf(one.Person)))),
        (Day, pass.Done.Text ?? ""),
        (In, Text(pass.SheetsIn)), (Added, Text(pass.Added)), (Out, Text(pass.SheetsOut)), (MakeReady, Text(pass.MakeReady)),
        (Spoiled, Counts(pass.SpoiledBy, pass.Spoiled)), (HeldOut, Counts(pass.HeldOutAs, pass.HeldOut)),
        (Kind, PassKinds.Plain(pass.Kind)), (Through, pass.TakesAll ? "all" : "some"), (Side, pass.Side), (AtBench, pass.Name ?? ""), (Note, pass.Note ?? ""),
        (Which, string.Join(", ", pass.Sheets.Select(one => work.Impressions.FirstOrDefault(sheet => sheet.Id == one.Impression)?.ShownCode).OfType<string>())),
    ];

    private static PassTyped Typed(Form form, Func<Field, bool> counts)
    {
        var inks = Answer(Ink);
        var colours = List(Colours);

        return new PassTyped
        {
            Words = new PassWords
            {
                Kind = Answer(Kind) is { } kind ? PassKinds.All.First(word => PassKinds.Plain(word) == kind) : null,
                Name = Answer(AtBench),
                Side = Answer(Side),
                Reach = Answer(Through),
                Done = Fields.DateOf(Answer(Day)),
                SheetsIn = Fields.Whole(Answer(In)),
                Added = Fields.Whole(Answer(Added)),
                SheetsOut = Fields.Whole(Answer(Out)),
                MakeReady = Fields.Whole(Answer(MakeReady)),
                Manner = Answer(Manner) is { } manner && (Naming.Split(form[Colours]).Count > 1 || manner != "flat") ? PassKinds.Manners.First(word => PassKinds.Plain(word) == manner) : null,
                Note = Answer(Note),
            },
            Matrices = List(Blocks),
            // An ink alone belongs to the colour that stands in the form.
            Colours = colours ?? (inks is null ? null : Naming.Split(form[Colours])),
            Ink = inks ?? (colours is [var only] && !only.Contains('=', StringComparison.Ordinal) ? form[Ink] : null),
            People = List(Who),
            Spoiled = List(Spoiled),
            HeldOut = List(HeldOut),
            Sheets = Answer(Which),
            Proofs = Answer(Proofs),
        };

        string? Answer(string label) => form.FieldOf(label) is { } field && counts(field) ? field.Answer : null;

        IReadOnlyList<string>? List(string label) => Answer(label) is { } answer ? Naming.Split(answer) : null;
    }

    private static string Used(Work work, PassMatrix used)
    {
        var matrix = work.Matrices.FirstOrDefault(one => one.Id == used.Matrix);
        var state = matrix?.States.FirstOrDefault(one => one.Id == used.State);

        return matrix is null ? "" : state is null ? Named(matrix) : $"{Named(matrix)}={state.Name}";
    }

    private static string Named(Matrix matrix) => matrix.Part ?? Counted.Figure(matrix.Id);

    private static string Counts(IReadOnlyList<PassCount> named, int? all)
    {
        var rest = (all ?? 0) - named.Sum(one => one.Sheets);

        return string.Join("; ", [.. named.Select(one => $"{one.Word}={Counted.Figure(one.Sheets)}"), .. rest > 0 ? [Counted.Figure(rest)] : Array.Empty<string>()]);
    }

    private static string Text(int? count) => count is { } n ? Counted.Figure(n) : "";
}
