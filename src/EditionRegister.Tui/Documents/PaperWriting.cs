using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>Writes a paper, after asking where it changes the register, and says what was written.</summary>
internal static class PaperWriting
{
    /// <param name="desk">The desk.</param>
    /// <param name="paper">What.</param>
    /// <param name="order">Of which sheets, and where to.</param>
    /// <param name="then">What opens when it is written.</param>
    public static async Task<Opening?> BeginAsync(Desk desk, Paper paper, PaperOrder order, Func<Written, Opening?> then) =>
        paper.Asked(order) is { } asked ? Question.YesNo(asked, "issue and write", () => WriteAsync(desk, paper, order, then)) : await WriteAsync(desk, paper, order, then);

    private static async Task<Opening?> WriteAsync(Desk desk, Paper paper, PaperOrder order, Func<Written, Opening?> then)
    {
        var written = await paper.WriteAsync(desk, order);
        desk.Say(written.Sentence, Tone.Good);

        return then(written);
    }
}
