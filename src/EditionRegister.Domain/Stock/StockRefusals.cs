using System.Globalization;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Stock;

/// <summary>Why stock cannot be taken, or settled, so.</summary>
public static class StockRefusals
{
    private const int MostNamed = 8;

    public static RefusedException NothingToCount() =>
        new("nothing-to-count", "Nothing should be there, and nothing was scanned. Nothing was changed. Scan what lies there, or name another place; `edreg place list` shows what lies where.");

    public static RefusedException NoCodes() =>
        new("no-codes-scanned", "No code was read. Nothing was changed. Give at least one code: with --codes, or with --file one in each line. Where a place was found empty, say so with --empty.");

    public static RefusedException Misread(IReadOnlyList<ScanAt> misread)
    {
        ArgumentNullException.ThrowIfNull(misread);

        var named = misread.Take(MostNamed).Select(scan => $"{scan.Where}, “{scan.Read.Text}”: {scan.Read.Problem}");
        var more = misread.Count > MostNamed ? string.Create(CultureInfo.InvariantCulture, $"; and {misread.Count - MostNamed} more") : "";

        return new("scan-misread", $"Not every code could be read: {string.Join("; ", named)}{more}. Nothing was changed. Look at the label and type or scan it again.");
    }

    public static RefusedException NoSuchTake(long id) =>
        new("stock-take-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no stock-take {id}. Nothing was changed. `edreg stock list` shows all of them."));

    public static RefusedException NotInTake(long id, string code) =>
        new("not-in-stock-take", string.Create(CultureInfo.InvariantCulture, $"Stock-take {id} has nothing open under the code {code}. Nothing was changed. `edreg stock show {id}` shows what is open."));

    public static RefusedException NothingOpen(long id) =>
        new("nothing-to-settle", string.Create(CultureInfo.InvariantCulture, $"Nothing of what you name is still open in stock-take {id}. Nothing was changed. `edreg stock show {id}` shows how everything stands."));

    public static RefusedException NoProposals(long id) =>
        new("not-a-stock-take", string.Create(CultureInfo.InvariantCulture, $"{id} is a delivery: what was handed over is recorded already, and what was not stayed where it was. Nothing was changed. Record another delivery with `edreg stock deliver`."));

    public static RefusedException StillOut(long id) =>
        new("still-out", string.Create(CultureInfo.InvariantCulture, $"{id} is a return: what did not come back is still out with whoever has it. Nothing was changed. Settle only what came back without being awaited, with --strangers put-away."));

    public static RefusedException NotHereToGo(Impression sheet, string where) =>
        new("not-here-to-go", $"{sheet.ShownCode} is not here to be handed over: it is {where}. Nothing was changed. Record its return first, or look whether it is another sheet.");

    public static RefusedException NothingAwaited(string holder) =>
        new("nothing-awaited", $"Nothing is out with {holder}, so nothing can come back from there. Nothing was changed. Look at the name; `edreg person show` tells what someone has.");
}
