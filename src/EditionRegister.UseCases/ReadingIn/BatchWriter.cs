using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Inventory;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Writes what a file lists: an entry for each person, place and work, all of one batch.</summary>
internal sealed class BatchWriter(Writing writing, long batch)
{
    private readonly BatchNames _names = new(writing);
    private readonly Func<RegisterCode> _draw = CodeDrawing.From(writing);

    public int NewWorks { get; private set; }

    public void Write(ListedWork listed)
    {
        var id = listed.Known?.Id ?? writing.NewId("work");
        long? maker = listed.First.Maker is { } name ? _names.Person(name) : null;

        // People and places come first in the batch, since a work's facts point at them.
        var places = listed.Rows.Select(row => (Row: row, Where: PositionOf(row), Whose: OwnerOf(row, maker))).ToList();
        var deed = writing.On(Root.Work(id));

        if (listed.Known is null)
        {
            NewWorks++;
            MakeWork(listed.First, maker).Record(id, writing.Read.OwnWords, deed);
            JoinEstates(places.Select(place => (place.Row, place.Whose)), id, maker, deed);
        }

        var numberings = Editions(listed, id, deed);
        var ordinal = listed.Known?.Runs.Select(run => run.Ordinal).DefaultIfEmpty().Max() ?? 0;

        foreach (var run in places.GroupBy(place => (place.Row.Paper, place.Row.State, place.Row.Printed, place.Row.ImageHeight, place.Row.ImageWidth, place.Row.SheetHeight, place.Row.SheetWidth)))
        {
            var runId = ListedSheets.Run(run.First().Row, id, ++ordinal, deed);
            var inPile = 0;

            foreach (var (row, where, whose) in run)
            {
                var code = row.Code ?? _draw();
                var sheet = new NewSheet(runId, ++inPile, code, row.Standing) { Id = writing.Read.SheetOfCode(code.Text) };
                var made = ListedSheets.Sheet(row, sheet, where, whose, numberings.GetValueOrDefault(row), writing.Read.OwnWords, deed);
                Keep(row, made, deed);
            }
        }
    }

    /// <summary>A register's own list says that a sheet is free to sell and somebody else's than its maker's only where that is the maker's estate.</summary>
    private static void JoinEstates(IEnumerable<(ReadRow Row, Owner Whose)> sheets, long work, long? maker, Deed deed)
    {
        var estates = sheets.Where(sheet => sheet.Row is { Code: not null, FreeToSell: "yes", Owner: not null }).Select(sheet => sheet.Whose.Person).OfType<long>().Where(owner => owner != maker).Distinct();

        foreach (var (estate, place) in estates.Select((estate, place) => (estate, place)))
        {
            NewWork.Join(work, estate, Role.Estate, place + 1, deed);
        }
    }

    private static NewWork MakeWork(ReadRow row, long? maker) => new()
    {
        Title = row.Title,
        Untitled = row.TitleState == "untitled",
        TitleUnknown = row.TitleState == "unknown",
        Makers = maker is { } known ? [known] : [],
        MakerUnknown = maker is null,
        Year = row.Year,
        Technique = row.Technique,
    };

    private static Dictionary<ReadRow, (long Numbering, int? Number)> Editions(ListedWork listed, long work, Deed deed)
    {
        Dictionary<ReadRow, (long, int?)> given = new(ReferenceEqualityComparer.Instance);
        var ordinal = listed.Known?.Editions.Select(edition => edition.Ordinal).DefaultIfEmpty().Max() ?? 0;

        foreach (var edition in listed.Editions)
        {
            var known = KnownEditions.Edition(listed.Known, edition);
            var id = known?.Id ?? NewEdition.AsFound(work, ++ordinal, edition.Kind, edition.Extent, deed);

            if (edition.Rows.Max(row => row.StatedTotal) is { } total)
            {
                deed.Set("edition", id, ("stated_total", total));
            }

            if (known?.Statement is null)
            {
                deed.SetStatement(id, edition.Statement);
            }

            var place = known?.Numberings.Select(numbering => numbering.Ordinal).DefaultIfEmpty().Max() ?? 0;

            foreach (var numbering in edition.Numberings.Where(numbering => !numbering.IsOnlyStated || known?.Numberings.Any(one => one.Kind == numbering.Kind) != true))
            {
                var there = KnownEditions.Numbering(known, numbering);
                var numberingId = there?.Id ?? NewEdition.AddNumbering(
                    id, ++place, numbering.Plan, known?.Extent ?? edition.Extent, deed);
                var everyNumber = there is null && numbering.Size is not null && (known?.Extent ?? edition.Extent) != "someone-elses";

                foreach (var row in numbering.Rows)
                {
                    var number = numbering.OrdinalOf(row);
                    given[row] = (numberingId, number);

                    if (number is { } one && !everyNumber && there?.Numbers.Any(slot => slot.Ordinal == one) != true)
                    {
                        NewEdition.AddNumber(numberingId, one, "open", deed);
                    }
                }
            }
        }

        return given;
    }

    private void Keep(ReadRow row, long sheet, Deed deed)
    {
        foreach (var (header, value) in row.Kept)
        {
            deed.Set("kept_column", deed.NewId("kept_column"), ("impression", sheet), ("batch", batch), ("line", row.Line), ("header", header), ("value", value));
        }
    }

    private Position PositionOf(ReadRow row)
    {
        long? holder = row.With is { } with ? _names.Person(with) : null;

        return row.Place == InventoryRow.Gone ? Position.Gone
            : row.Place is { } place ? Position.InPlace(_names.Place(place)) with { Holder = holder }
            : holder is { } known ? Position.With(known)
            : Position.Unknown;
    }

    private Owner OwnerOf(ReadRow row, long? maker) =>
        row.Owner is { } owner ? Owner.Known(_names.Person(owner))
        : row.FreeToSell == "yes" && maker is { } ours ? Owner.Known(ours)
        : Owner.Unknown;
}
