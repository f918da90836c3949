using System.Globalization;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Shows;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Choosing;

/// <summary>The impressions of one work that were chosen, in the order named.</summary>
public sealed record ChosenOfWork(Work Work, IReadOnlyList<Impression> Sheets)
{
    /// <summary>The copy that was named with which each of them goes, where they were not named themselves; else null.</summary>
    public IReadOnlyDictionary<long, (Work Work, Impression Sheet)>? CopyOf { get; init; }

    /// <summary>They go with the copies of a set that were named.</summary>
    public bool GoWithCopy => CopyOf is not null;
}

/// <summary>Finds the impressions a person named.</summary>
public static partial class ImpressionsChosen
{
    /// <summary>By work, each in the order named.</summary>
    /// <exception cref="Domain.RefusedException">Something named is not there, was named twice, or nothing was named.</exception>
    public static IReadOnlyList<ChosenOfWork> Find(Reader reader, ImpressionChoice choice)
    {
        List<(Work Work, Impression Sheet)> found = [];
        Dictionary<long, Work> works = [];

        if (choice.Pile is not null)
        {
            found.AddRange(FromPile(Load(choice.Work ?? 0), choice));
        }

        foreach (var range in choice.Sheets is null ? [] : NumberRanges.Read(choice.Sheets, reader.OwnWords))
        {
            found.AddRange(range.Code is { } code ? [ByCode(code.Text, code.ToString())] : ByNumber(range));
        }

        if (choice.Show is { } show)
        {
            found.AddRange(reader.SheetsOf(reader.ShowOrRefuse(show), Load));
        }

        if (choice.All || choice.LyingIn is not null)
        {
            var places = choice.LyingIn is { } place ? Places.Within(reader.Book, Places.Find(reader.Book, place)) : null;
            found.AddRange(reader.WorkIds().Select(Load).SelectMany(work => work.Impressions.Where(sheet => Lies(sheet, places)).Select(sheet => (work, sheet))));
        }

        if (found.Count == 0)
        {
            throw ImpressionRefusals.NothingChosen();
        }

        if (found.GroupBy(pair => pair.Sheet.Id).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw ImpressionRefusals.Twice(twice.First().Sheet.ShownCode);
        }

        return [.. found.GroupBy(pair => pair.Work.Id).Select(group => new ChosenOfWork(group.First().Work, [.. group.Select(pair => pair.Sheet)]))];

        Work Load(long id)
        {
            if (!works.TryGetValue(id, out var work))
            {
                works[id] = work = reader.WorkOrRefuse(id);
            }

            return work;
        }

        (Work, Impression) ByCode(string code, string shown)
        {
            var place = reader.FindCode(code) ?? throw ImpressionRefusals.NoSuchCode(shown);
            var work = Load(place.Work);

            return (work, work.Impressions.First(sheet => sheet.Id == place.Impression));
        }

        IEnumerable<(Work, Impression)> ByNumber(NumberRange range)
        {
            var edition = choice.Edition ?? throw ImpressionRefusals.NumbersNeedEdition(range.ToString());
            var work = Load(reader.EditionsWork(edition) ?? throw EditionRefusals.NoSuchEdition(edition));

            return NumberGiving.Choose(work, work.Editions.First(one => one.Id == edition), [range]).Select(number => (work, HolderOf(work, number)));
        }
    }

    private static bool Lies(Impression sheet, IReadOnlySet<long>? places) =>
        places is null ? sheet.Standing != "left-out" : sheet.Where?.Place is { } place && places.Contains(place);

    private static Impression HolderOf(Work work, NumberChosen number) =>
        work.Impressions.FirstOrDefault(sheet => sheet.Numbering == number.Numbering.Id && sheet.Number == number.Ordinal)
        ?? throw ImpressionRefusals.NobodyHasNumber(number.Spelled, $"“{work.ShownTitle}”");

    private static IEnumerable<(Work Work, Impression Sheet)> FromPile(Work work, ImpressionChoice choice)
    {
        var run = work.Runs.FirstOrDefault(found => found.Ordinal == choice.Run) ?? throw WorkRefusals.NoSuchRun(work, choice.Run);
        var name = string.Create(CultureInfo.InvariantCulture, $"run {run.Ordinal} of “{work.ShownTitle}”");

        foreach (var range in NumberRanges.Read(choice.Pile))
        {
            for (var at = range is { Code: null, Kind: null } ? range.From ?? 0 : 0; at <= (range.To ?? 0); at++)
            {
                yield return (work, work.Impressions.FirstOrDefault(sheet => sheet.Run == run.Id && sheet.Ordinal == at)
                    ?? throw ImpressionRefusals.NotInPile(range.ToString(), name));
            }
        }
    }
}
