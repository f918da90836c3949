using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Bench;

/// <summary>The signing, sheet by sheet in the order of the numbers; what is signed is saved at once.</summary>
internal sealed class SigningPage(Desk desk, long work, long edition) : TextPage
{
    private readonly SigningOrder _order = new();
    private Work? _work;
    private Edition? _edition;
    private string? _signature;

    public override string Title => "Signing";

    public override string Explains =>
        "Lay the numbered sheets before you in the order of their numbers. For each the page shows the pencil line as it is to stand under the image: the number at the left, the title in the middle, the signature at the right. "
        + "Write it, then press y: the record says that it stands there so, and the next sheet comes. n leaves a sheet unsigned, s puts it behind the others, m is for a pencil that slipped: it asks whether the slip stands there still or was put right on the sheet. "
        + "Each sheet is saved at once; Backspace goes back to the one before, where y, n and m can be answered anew; Esc ends, and g on the work's page goes on another day.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is null ? [] : new KeyDeed[]
        {
            new("y", "signed so", SignAsync) { Explained = "Number, title and signature stand on the sheet as they are drawn here." },
            new("n", "not signed", LeaveAsync) { Explained = "Leaves the sheet unsigned and goes on; a sheet recorded as signed by mistake is put back to what was on record before." },
            KeyDeed.Doing("s", "skip for now", _order.Skip) with { Explained = "Puts the sheet behind the others: it comes again at the end." },
            KeyDeed.Opens("m", "miswritten", () => Miswritten.Asked(desk, Here!, _work!.OwnWords, Pencil(Here!), Recorded)) with { Explained = "Asks whether the slip stands there still, or was put right on the sheet itself: these are two records." },
        },
        .. _order.At > 0 ? new[] { KeyDeed.Doing("Backspace", "the one before", _order.Back) } : [],
        .. Here is null ? [] : new[] { KeyDeed.Opens("e", "the signature", Sign) with { Explained = "Changes how the signature reads in this session, such as M. Tolland." } },
        .. CanNumber ? new[] { KeyDeed.Opens("g", "give numbers", () => NumbersForm.New(desk, _work!, _edition!, null)) } : [],
        KeyDeed.Opens("Esc", "end the session", () => Back.Once),
    ];

    private Impression? Here => _order.Here is { } id ? _work?.Impressions.FirstOrDefault(sheet => sheet.Id == id) : null;

    private bool CanNumber => _work is { } shown && _edition is { IsClosed: false } declared && NumbersProposed.ForAll(shown, declared).Count > 0;

    public override async Task RefreshAsync() => Show(await desk.Store.Do(register => register.LookAround.Work(work)));

    public override IReadOnlyList<Line> Head(int width) => _work is { } shown && _edition is { } declared
        ? [.. Wrap.Of($"{Called.Edition(shown, declared)}: {HowFar.Of(declared, shown.Impressions)}. {SigningText.Left(_order.Left)}", width).Select(line => (Line)line), Line.Empty]
        : [];

    public override IReadOnlyList<Line> Text(int width) => _work is null ? []
        : Here is { } sheet ? SigningText.Sheet(_work, sheet, Pencil(sheet), _order.Before(sheet.Id) is not null, width)
        : SigningText.Done(_order.Count, CanNumber, width);

    private PencilText Pencil(Impression sheet) => Signing.PencilFor(_work!, sheet, _signature);

    private Form Sign() => new("How it is signed", [
        new Field("Signature", Pencil(Here!).Signature) { IsNeeded = true, Form = "as it is written on the sheets: M. Tolland" },
    ], form =>
    {
        _signature = form["Signature"];

        return Task.FromResult(new Saved($"The signature reads {_signature} from here on in this session."));
    });

    private async Task<Opening?> SignAsync()
    {
        var sheet = Here!;

        if (sheet.IsSigned)
        {
            _order.Next();

            return null;
        }

        var what = Signing.SignedSo(sheet, Pencil(sheet));

        return await WriteAsync(sheet, register => register.InscribeImpressions.Run(ImpressionChoice.OfCode(sheet.ShownCode), what), SheetSaid.Inscribed(1));
    }

    private async Task<Opening?> LeaveAsync()
    {
        var sheet = Here!;

        if (sheet.IsSigned && _order.Before(sheet.Id) is { } before)
        {
            return await WriteAsync(sheet, register => register.PutInscriptionBack.Run(sheet.ShownCode, before), $"{_work!.NumberOf(sheet)} is not signed: the record is as it was before.");
        }

        _order.Next();

        return null;
    }

    private async Task<Opening?> WriteAsync(Impression sheet, Func<UseCases.Register, int> write, string said)
    {
        var (found, isAsSeen) = await desk.Store.Do(register =>
        {
            var now = register.LookAround.Work(work);

            if (!IsAsSeen(now, sheet))
            {
                return (now, false);
            }

            write(register);

            return (register.LookAround.Work(work), true);
        });

        if (isAsSeen)
        {
            Recorded(sheet, said);
        }
        else
        {
            desk.Say("Someone changed this sheet meanwhile. Nothing was changed; it is shown as it stands now, so look again.", Tone.Warning);
        }

        Show(found);

        return null;
    }

    /// <summary>A sheet is recorded: the next one comes, and u or Backspace lead back.</summary>
    private Undoing Recorded(Impression sheet, string said)
    {
        _order.Remember(sheet);
        _order.Next();
        desk.Say(said, Tone.Good);
        var before = PencilOnRecord.Of(sheet);
        desk.Undo = new Undoing($"what was said of {_work!.NumberOf(sheet)}", async () =>
        {
            await desk.Store.Do(register => register.PutInscriptionBack.Run(sheet.ShownCode, before));
            _order.GoTo(sheet.Id);

            return $"What was recorded of {sheet.ShownCode} is taken back.";
        });

        return desk.Undo;
    }

    private void Show(Work found)
    {
        _work = found;
        _edition = found.Editions.FirstOrDefault(one => one.Id == edition);
        _order.Follow(_edition is { } declared ? Signing.Order(found, declared) : []);
    }

    private static bool IsAsSeen(Work now, Impression seen) =>
        now.Impressions.FirstOrDefault(other => other.Id == seen.Id) is { } sheet
        && sheet.Numbering == seen.Numbering && sheet.Number == seen.Number && PencilOnRecord.Of(sheet) == PencilOnRecord.Of(seen);
}
