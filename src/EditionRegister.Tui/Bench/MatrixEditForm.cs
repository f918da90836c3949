using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>What is put right about a block or plate, and where it now lies.</summary>
internal static class MatrixEditForm
{
    private const string Part = "Part of the image";
    private const string Material = "Material";
    private const string Reduction = "Reduction";
    private const string Made = "Made";
    private const string Place = "Place";
    private const string PlaceIs = "That place is";
    private const string Keeper = "Who has it";

    public static async Task<Opening?> OfAsync(Desk desk, Work work, Matrix matrix)
    {
        var book = await desk.Store.Do(register => register.LookAround.Book());

        return new Form($"Put {MatrixText.Of(work, matrix)} right", [
            Fields.Known(Place, [.. book.Places.Keys.Select(id => book.PathOf(id)).Order(StringComparer.Ordinal)], "Studio › Block shelf", matrix.Place is { } place ? book.PathOf(place) : ""),
            Field.OneOf(PlaceIs, [Naming.Known, Naming.New]),
            Fields.Known(Keeper, [.. book.People.Values.Where(person => !person.IsErased).Select(person => person.FullName)], "where it is not the maker", matrix.Keeper is { } keeper ? book.NameOf(keeper) : ""),
            new Field(Part, matrix.Part ?? "") { Form = "key, sky, left half" },
            new Field(Material, matrix.Material ?? "") { Form = "linoleum, copper" },
            Field.OneOf(Reduction, ["no", "yes", "unknown"], matrix.Reduction),
            Fields.Date(Made, matrix.Made.Text ?? ""),
        ], form => SaveAsync(desk, work, matrix, form))
        {
            Name = "Put a block or plate right",
            About = ["A field that is emptied stays as it was."],
            OwnEachTime = [Part, Material, Reduction, Made],
        };
    }

    private static async Task<Saved> SaveAsync(Desk desk, Work work, Matrix matrix, Form form)
    {
        var place = Changed(form, Place);
        var keeper = Changed(form, Keeper);
        MatrixCorrection correction = new()
        {
            Part = Changed(form, Part),
            Material = Changed(form, Material),
            Reduction = Changed(form, Reduction),
            Made = Changed(form, Made) is { } made ? RecordedDate.Read(made) : null,
        };

        if (correction == new MatrixCorrection() && (place ?? keeper) is null)
        {
            return new Saved("Nothing was different, so nothing was changed.");
        }

        var now = await desk.Store.Do(register =>
        {
            Naming.RecordNewPlace(register, place, form[PlaceIs]);
            register.EditMatrix.Run(work.Id, Counted.Figure(matrix.Id), correction, place, keeper, seen: matrix.V);

            return register.LookAround.Work(work.Id);
        });
        MatrixCorrection before = new()
        {
            Part = correction.Part is null ? null : matrix.Part,
            Material = correction.Material is null ? null : matrix.Material,
            Reduction = correction.Reduction is null ? null : matrix.Reduction,
            Made = correction.Made is null ? null : matrix.Made,
            Place = place is null ? null : matrix.Place,
            Keeper = keeper is null ? null : matrix.Keeper,
        };
        // What was blank before cannot be made blank again by a correction.
        var isPuttable = form.Fields.All(field => field.Text == field.AsGiven || field.AsGiven.Length > 0);

        return new Saved(BenchSaid.PutRight(now, now.Matrices.First(one => one.Id == matrix.Id)))
        {
            Undo = isPuttable ? new Undoing("the correction", async () =>
            {
                await desk.Store.Do(register => register.EditMatrix.Run(work.Id, Counted.Figure(matrix.Id), before));

                return $"{MatrixText.Of(work, matrix)} is as it was before.";
            }) : null,
        };
    }

    private static string? Changed(Form form, string label) => form.FieldOf(label) is { } field && field.Text != field.AsGiven ? field.Answer : null;
}
