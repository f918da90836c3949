using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Choosing;

public static partial class ImpressionsChosen
{
    /// <summary>The impressions chosen, and behind them the sheets that lie in those of them that are copies of a set, where those go with their copy.</summary>
    /// <param name="reader">The register.</param>
    /// <param name="choice">As a person names them.</param>
    /// <param name="custom">Whether sheets go with their copy in a deed of that kind, where the choice does not say.</param>
    /// <exception cref="Domain.RefusedException">As <see cref="Find"/>.</exception>
    public static IReadOnlyList<ChosenOfWork> FindWithSets(Reader reader, ImpressionChoice choice, bool custom)
    {
        var chosen = Find(reader, choice);

        return choice.WithSets ?? custom ? [.. chosen, .. Along(reader, chosen)] : chosen;
    }

    /// <summary>Only those that are where their copy is and were not named themselves; a set may lie in a set.</summary>
    private static IEnumerable<ChosenOfWork> Along(Reader reader, IReadOnlyList<ChosenOfWork> chosen)
    {
        var met = chosen.SelectMany(ofWork => ofWork.Sheets).Select(sheet => sheet.Id).ToHashSet();
        var works = chosen.ToDictionary(ofWork => ofWork.Work.Id, ofWork => ofWork.Work);
        List<(Work Work, Impression Sheet, (Work, Impression) Copy)> along = [];
        // What lies in a set that lies in a copy goes with the copy that was named.
        Queue<(Impression Within, (Work, Impression) Copy)> copies = new(chosen.SelectMany(ofWork => ofWork.Sheets.Select(sheet => (sheet, (ofWork.Work, sheet)))));

        while (copies.TryDequeue(out var copy))
        {
            foreach (var lies in copy.Within.SetSheets.Where(sheet => sheet.IsIn && sheet.Where == copy.Within.Where && met.Add(sheet.Sheet)))
            {
                if (!works.TryGetValue(lies.Work, out var work))
                {
                    works[lies.Work] = work = reader.WorkOrRefuse(lies.Work);
                }

                var sheet = work.Impressions.First(one => one.Id == lies.Sheet);
                along.Add((work, sheet, copy.Copy));
                copies.Enqueue((sheet, copy.Copy));
            }
        }

        return along.GroupBy(one => one.Work.Id).Select(group => new ChosenOfWork(group.First().Work, [.. group.Select(one => one.Sheet)])
        {
            CopyOf = group.ToDictionary(one => one.Sheet.Id, one => one.Copy),
        });
    }
}
