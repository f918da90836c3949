using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>Undoing a file that was read in, whole, after saying what that takes out again.</summary>
internal static class BatchUndoing
{
    private const int Shown = 5;

    public static KeyDeed Key(Desk desk, long n) => new("b", "undo its batch", () => AskAsync(desk, n))
    {
        Explained = "Undoes the file that was read in with this entry, the whole of it, as long as nothing was built on it. You are asked first.",
    };

    private static async Task<Opening?> AskAsync(Desk desk, long n)
    {
        if (await desk.Store.Do(register => register.LookAround.EntryWhole(n)) is not { Entry.Batch: { } batch } seen)
        {
            return null;
        }

        var question = Question.YesNo($"Undo batch {Counted.Figure(batch)}, all {Counted.Of(seen.BatchSize, "entry", "entries")} of it?", "undo it", async () =>
        {
            var count = await desk.Store.Do(register => register.UndoBatch.Run(batch));
            desk.Say(BatchesSaid.Undone(batch, count), Tone.Good);

            return null;
        });

        return new Question(question.Asked, question.Answers) { Shown = [.. Lines(seen)] };
    }

    private static IEnumerable<Line> Lines(EntrySeen seen)
    {
        yield return $"It was read in on {seen.Entry.At[..Math.Min(10, seen.Entry.At.Length)]}, and wrote of:";

        foreach (var subject in seen.Mates.Select(mate => mate.Subject).Distinct().Take(Shown))
        {
            yield return "  " + TextWidth.Cut(SafeText.Show(subject), 60);
        }

        var more = seen.Mates.Select(mate => mate.Subject).Distinct().Count() - Shown;

        if (more > 0 || seen.BatchSize > seen.Mates.Count)
        {
            yield return "  and of others.";
        }

        yield return "Everything it brought in is taken out again. Codes stay given to";
        yield return "their sheets, so that the same file can be read in once more.";
    }
}
