using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>What reading a file in would make, column by column and problem by problem; and the reading in, when told to.</summary>
internal sealed class ReadInPage(Desk desk, string path, ReadInReport first) : TextPage
{
    private IReadOnlyList<string> _maps = [];
    private ReadInReport? _seen = first;
    private bool _isTaken;

    public override string Title => "Read in a file";

    public override string Explains =>
        "This is what would be made of the file. Nothing is taken yet. Look at the columns first: each heading of the file is taken for something the register knows, or kept with its sheet as a note. "
        + "Where a guess is wrong, press e and say what the column is. A problem keeps the whole file from being read in: put it right in the spreadsheet, save it as CSV again, and press a. "
        + "A remark does not: that value is kept as it was written. All of the file is read in as one batch, and the batch can be undone as long as nothing was built on it.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Take(),
        .. Mend(),
        .. _isTaken || _seen is { WasReadBefore: true } ? (KeyDeed[])[] : [new KeyDeed("a", "look again", AgainAsync) { Explained = "Looks into the file once more, after it was changed in the spreadsheet." }],
        KeyDeed.Opens("f", "another file", () => ReadInForm.New(desk)) with { Explained = "Asks for a file again." },
        KeyDeed.Opens("Esc", "go back", () => Back.Once) with { Explained = _isTaken ? "Goes back; what was read in stays." : "Goes back; nothing is taken." },
    ];

    public override IReadOnlyList<Line> Text(int width) => _seen is { } seen ? ReadInText.Of(seen, _isTaken, width) : ["The file could not be looked into. Press a to look again, or f for another one."];

    // What it was understood as stands until it is looked into again: reading it in looks again anyhow.
    public override async Task RefreshAsync()
    {
        if (_seen is null)
        {
            var (message, tone) = (desk.Message, desk.MessageTone);
            desk.Progress($"Looking into {Path.GetFileName(path)}…");
            _seen = await desk.Store.Do(register => register.ReadIn.Preview(path, _maps));
            desk.Say(message, tone);
        }
    }

    private IEnumerable<KeyDeed> Take()
    {
        if (_seen is { Problems.Count: 0, WasReadBefore: false } && !_isTaken)
        {
            yield return new KeyDeed("y", "read it in", TakeAsync) with { Explained = "Takes all of the file into the register, as one batch that can be undone." };
        }
    }

    private IEnumerable<KeyDeed> Mend()
    {
        if (_seen is { WasReadBefore: false } seen && !_isTaken)
        {
            yield return KeyDeed.Opens("e", "change columns", () => ColumnsForm.Of(seen, (maps, now) => (_maps, _seen) = (maps, now), maps => desk.Store.Do(register => register.ReadIn.Preview(path, maps))))
                with { Explained = "Says what each column of the file means, where the guess is wrong." };
        }
    }

    private async Task<Opening?> AgainAsync()
    {
        _seen = null;
        await RefreshAsync();
        desk.Say("Looked into the file as it is now.", Tone.Quiet);
        return null;
    }

    private async Task<Opening?> TakeAsync()
    {
        desk.Progress($"Reading {Path.GetFileName(path)} in…");

        try
        {
            _seen = await desk.Store.Do(register => register.ReadIn.Run(path, _maps));
        }
        catch (RefusedException)
        {
            // The file or the register is another by now than what was shown.
            _seen = null;
            await RefreshAsync();
            throw;
        }

        desk.Say(ReadInText.Outcome(_seen), Tone.Good);

        if (_seen is { Batch: { } batch, WasReadBefore: false })
        {
            _isTaken = true;
            desk.Undo = new Undoing("the reading in", () => UndoAsync(batch));
        }

        return null;
    }

    private async Task<string> UndoAsync(long batch)
    {
        var taken = await desk.Store.Do(register => register.UndoBatch.Undo(batch));
        (_isTaken, _seen) = (false, null);

        return BatchesSaid.Undone(batch, taken);
    }
}
