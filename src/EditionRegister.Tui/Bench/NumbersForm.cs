using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>Which sheets get the numbers of an edition, in which order: as the pile lies, unless somebody lays it otherwise.</summary>
internal static class NumbersForm
{
    /// <param name="desk">The desk.</param>
    /// <param name="work">The work as it stands.</param>
    /// <param name="edition">One of its editions.</param>
    /// <param name="next">What opens when the numbers are given; null stays.</param>
    public static Form New(Desk desk, Work work, Edition edition, Page? next)
    {
        var proposed = NumbersProposed.ForAll(work, edition);
        var run = work.Runs.Last(one => proposed.Any(numbering => numbering.Sheets.Any(sheet => sheet.Run == one.Id)));

        return new Form($"Numbers of {Called.Work(work)}", [.. proposed.Select(one => FieldOf(work, run, one.Numbering, one.Sheets))], form => GiveAsync(desk, work, edition, run, form, next))
        {
            Name = $"Numbers of edition {Counted.Figure(edition.Id)}",
            About =
            [
                $"Beside each numbering stand the sheets that get its first open numbers, by their places in the pile of print run {Counted.Figure(run.Ordinal)}, or by their codes. Type another order, or empty a field to give none of it now.",
            ],
        };
    }

    private static Field FieldOf(Work work, PrintRun run, Numbering numbering, IReadOnlyList<Impression> sheets) =>
        Fields.Ranges(numbering.Span, string.Join(", ", Places(work, run, sheets)), "such as 1-12, or 3, 1, 2, or codes; empty for none now");

    /// <summary>1-9, 11: places of the run, and the codes of sheets from other runs.</summary>
    private static IEnumerable<string> Places(Work work, PrintRun run, IReadOnlyList<Impression> sheets)
    {
        for (var at = 0; at < sheets.Count;)
        {
            if (work.RunOf(sheets[at])?.Id != run.Id)
            {
                yield return sheets[at++].ShownCode;
                continue;
            }

            var from = at++;

            while (at < sheets.Count && sheets[at].Run == run.Id && sheets[at].Ordinal == sheets[at - 1].Ordinal + 1)
            {
                at++;
            }

            var (first, last) = (Counted.Figure(sheets[from].Ordinal), Counted.Figure(sheets[at - 1].Ordinal));
            yield return first == last ? first : $"{first}-{last}";
        }
    }

    private static async Task<Saved> GiveAsync(Desk desk, Work work, Edition edition, PrintRun run, Form form, Page? next)
    {
        var answered = form.Fields.Where(field => field.Answer is not null).ToList();

        if (answered.Count == 0)
        {
            return new Saved("No numbers were given.", next);
        }

        var (now, given) = await desk.Store.Do(register =>
        {
            List<string> codes = [], numbers = [];
            var found = register.LookAround.Work(work.Id);

            foreach (var field in answered)
            {
                var numbering = found.Editions.First(one => one.Id == edition.Id).Numberings.First(one => one.Span == field.Label);
                var sheets = register.LookAround.Chosen(ChoiceOf(work, run, field.Answer!)).SelectMany(chosen => chosen.Sheets).ToList();
                codes.AddRange(sheets.Select(sheet => sheet.ShownCode));
                numbers.AddRange(NumberGiving.OpenNumbers(found, numbering).Take(sheets.Count).Select(number => Named(numbering, number)));
            }

            // All of them in one deed: either every number is given or none.
            var deed = register.GiveNumbers.ByHand(edition.Id, Choice(codes), string.Join(", ", numbers));

            return (register.LookAround.Work(work.Id), deed);
        });
        var sheets = given.Select(one => one.Sheet.ShownCode).ToList();

        return new Saved(EditionSaid.NumbersGiven(now, now.Editions.First(one => one.Id == edition.Id), given.Count), next)
        {
            Undo = new Undoing("the numbers", async () =>
            {
                var count = await desk.Store.Do(register => register.GiveNumbers.TakeBack(Choice(sheets)));

                return EditionSaid.NumbersTakenBack(count);
            }),
        };
    }

    /// <summary>Places of the pile, and whatever is a code by its code.</summary>
    private static ImpressionChoice ChoiceOf(Work work, PrintRun run, string typed)
    {
        var ranges = NumberRanges.Read(typed);
        var (codes, places) = (ranges.Where(range => range.Code is not null).ToList(), ranges.Where(range => range.Code is null).ToList());

        return new ImpressionChoice
        {
            Work = work.Id,
            Run = run.Ordinal,
            Pile = places.Count == 0 ? null : string.Join(", ", places),
            Sheets = codes.Count == 0 ? null : string.Join(", ", codes),
        };
    }

    private static string Named(Numbering numbering, int number) =>
        numbering.Typed(number)!;

    private static ImpressionChoice Choice(IReadOnlyList<string> codes) => new() { Sheets = string.Join(", ", codes) };
}
