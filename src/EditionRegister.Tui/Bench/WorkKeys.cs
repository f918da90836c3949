using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Documents;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;
using EditionRegister.Tui.Sets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>The keys of a work's page: the next step first, and only those that work now.</summary>
internal static class WorkKeys
{
    public static IReadOnlyList<KeyDeed> Of(Desk desk, Work work, WorkRow? here)
    {
        List<KeyDeed> keys = [.. Open(desk, work, here), .. Steps(desk, work, here), .. Others(desk, work, here)];
        var next = NextStep.Of(work).Key;

        return [.. keys.Where(key => key.Key == next), .. keys.Where(key => key.Key != next)];
    }

    private static IEnumerable<KeyDeed> Open(Desk desk, Work work, WorkRow? here)
    {
        if (here?.Run is { } run)
        {
            yield return KeyDeed.Opens("Enter", "open the print run", () => new RunPage(desk, work.Id, run.Ordinal));
        }
        else if (here?.Matrix is { } matrix)
        {
            yield return KeyDeed.Opens("Enter", $"open the {matrix.Called}", () => new MatrixPage(desk, work.Id, matrix.Id));
            yield return KeyDeed.Opens("f", "state its fate", () => MatrixForms.Fate(desk, work, matrix));
        }
        else if (here?.Edition is { } edition)
        {
            yield return KeyDeed.Opens("Enter", "open its map", () => new GoTo(RoomName.PlanChest, new EditionPage(desk, edition.Id)));
        }
    }

    private static IEnumerable<KeyDeed> Steps(Desk desk, Work work, WorkRow? here)
    {
        var run = here?.Run ?? work.Runs.LastOrDefault(one => work.Impressions.Any(sheet => sheet.Run == one.Id && sheet.Standing == "pulled")) ?? (work.Runs.Count > 0 ? work.Runs[^1] : null);

        if (run is not null && work.Impressions.Any(sheet => sheet.Run == run.Id))
        {
            yield return KeyDeed.Opens("o", "sort the pulls", () => OnTheRack.Sorting(desk, work, run));
        }

        if (work.Editions.Count == 0)
        {
            yield return Declares(desk, work);
        }

        if ((here?.Edition ?? (work.Editions.Count > 0 ? work.Editions[^1] : null)) is { } edition)
        {
            yield return new KeyDeed("g", "number and sign", () => SigningOpening.OfAsync(desk, work.Id, edition.Id))
            {
                Explained = "Gives the edition's numbers to the kept sheets, where that is still to be done, and then goes through the signing sheet by sheet.",
            };
        }
    }

    private static IEnumerable<KeyDeed> Others(Desk desk, Work work, WorkRow? here)
    {
        yield return new KeyDeed("n", "add a print run", () => RunForms.NewAsync(desk, work.Id));
        yield return KeyDeed.Opens("b", "add a block or plate", () => MatrixForms.New(desk, work));

        if ((here?.Run ?? (work.Runs.Count > 0 ? work.Runs[^1] : null)) is { } printing && (here?.Run is not null || printing.IsUnderWay(work.Impressions.Count(sheet => sheet.Run == printing.Id))))
        {
            yield return new KeyDeed("p", "record a pass", () => PassForm.NewAsync(desk, work, printing))
            {
                Explained = "Records one trip of the run's sheets through the press or under the hand; F4 fills in the last one, so that only what is different is typed.",
            };
        }

        if (here?.Run is { } run)
        {
            yield return KeyDeed.Opens("f", "correct its figures", () => RunForms.Edit(desk, work, run)) with
            {
                Explained = "Puts right what was counted and measured of the print run of the current line.",
            };
        }

        yield return new KeyDeed("e", "correct the work", () => WorkForms.EditAsync(desk, work));
        yield return new KeyDeed("j", "name more people", () => WorkForms.JoinAsync(desk, work)) { Explained = "Names people who had a part in the work: printer, workshop, publisher, and more." };

        if (work.Editions.Count == 0 || work.Editions.Any(edition => edition.Extent == "partly-known"))
        {
            yield return new KeyDeed("k", "an old edition", () => KnownForm.OfAsync(desk, work))
            {
                Explained = "Records what is known of an old edition, stretch by stretch: numbers sold long ago to buyers not known, and sheets that are still there.",
            };
        }
        yield return KeyDeed.Opens("v", "view pictures", () => new Pictures.PicturesPage(desk, new Pictures.PicturesWanted(work.Id, Matrix: here?.Matrix?.Id))) with
        {
            Explained = "Lists the pictures of the work, its sheets and its blocks; on the line of a block or plate, a picture is added to that.",
        };

        if (Numbered(work) is { Count: > 0 } sheets)
        {
            yield return KeyDeed.Opens("d", "documents", () => PaperForms.Of(desk, Choice(sheets), $"the {Counted.Of(sheets.Count, "numbered sheet")} of {Called.Work(work)}"));
        }

        yield return work.Set is null
            ? KeyDeed.Opens("s", "make it a set", () => SetForms.Make(desk, work)) with { Explained = "Makes the work a portfolio, suite, book or print exchange: its own sheets are the copies, and its parts are works of their own." }
            : KeyDeed.Opens("s", "the set, its copies", () => new SetPage(desk, work.Id)) with { Explained = "Opens the set: its parts, and which sheets lie in which copy." };

        // A reduction is printed once, so it has one edition of ours.
        if (work.Editions.Count > 0 && !(work.IsReduction && work.Editions.Any(edition => edition.IsOurs)))
        {
            yield return Declares(desk, work);
        }
    }

    private static KeyDeed Declares(Desk desk, Work work) => KeyDeed.Opens("a", "declare an edition", () => DeclareForm.New(desk, work)) with
    {
        Explained = "Rehearses the declaration: shows every pencil line, the totals and what certificates will say, before anything is written; then declares it.",
    };

    private static List<string> Numbered(Work work) => [.. work.Impressions.Where(sheet => sheet.Number is not null).Select(sheet => sheet.ShownCode)];

    private static ImpressionChoice Choice(IReadOnlyList<string> codes) => new() { Sheets = string.Join(", ", codes) };
}
