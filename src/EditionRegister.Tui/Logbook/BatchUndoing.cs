using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>Undoing a batch whole, a file that was read in or a deed over several works, after saying what that is about.</summary>
internal static class BatchUndoing
{
    private const int Shown = 5;

    public static KeyDeed Key(Desk desk, long n) => new("b", "undo its batch", () => AskAsync(desk, n))
    {
        Explained = "Undoes the whole batch this entry is of: a file that was read in, or a deed over several works; as long as nothing was built on it. You are asked first.",
    };

    private static async Task<Opening?> AskAsync(Desk desk, long n)
    {
        if (await desk.Store.Do(register => register.LookAround.EntryWhole(n)) is not { Entry.Batch: { } batch } seen)
        {
            return null;
        }

        var question = Question.YesNo($"Undo batch {Counted.Figure(batch)}, all {Counted.Of(seen.BatchSize, "entry", "entries")} of it?", "undo it", async () =>
        {
            var undone = await desk.Store.Do(register => register.UndoBatch.Undo(batch));
            desk.Say(BatchesSaid.Undone(batch, undone), Tone.Good);

            return null;
        });

        return new Question(question.Asked, question.Answers) { Shown = [.. Lines(seen)] };
    }

    private static IEnumerable<Line> Lines(EntrySeen seen)
    {
        var day = seen.Entry.At[..Math.Min(10, seen.Entry.At.Length)];
        var isReadIn = seen.Entry.Deed == "read-in";

        yield return isReadIn ? $"It was read in on {day}, and wrote of:" : $"It was recorded on {day} ({DeedInWords.Of(seen.Entry.Deed)}), and wrote of:";

        foreach (var subject in seen.Mates.Select(mate => mate.Subject).Distinct().Take(Shown))
        {
            yield return "  " + TextWidth.Cut(SafeText.Show(subject), 60);
        }

        var more = seen.Mates.Select(mate => mate.Subject).Distinct().Count() - Shown;

        if (more > 0 || seen.BatchSize > seen.Mates.Count)
        {
            yield return "  and of others.";
        }

        yield return isReadIn ? "Everything it brought in is taken out again. Codes stay given to" : "What it made is taken out again, and what it changed is put back";
        yield return isReadIn ? "their sheets, so that the same file can be read in once more." : "to what stood there before.";
    }
}
