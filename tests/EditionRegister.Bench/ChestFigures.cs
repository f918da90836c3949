using System.Diagnostics;
using EditionRegister.Store;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Bench;

/// <summary>What the plan chest costs: to open, to read whole, to look in at every key, and in memory.</summary>
internal static class ChestFigures
{
    private const int Rounds = 10;

    /// <summary>What somebody types, key by key: titles, makers, codes, places, buyers, galleries, several words, and what is nowhere.</summary>
    private static readonly string[] Typed =
    [
        .. Prefixes("harbour"), .. Prefixes("tolland mi"), .. Prefixes("7kq4-m2x3"), .. Prefixes("drawer 11 attic"), .. Prefixes("雨の港"), .. Prefixes("grünw gallery"),
        "a", "e", "s", "2", "zz", "x5", "etude", "żagle kelp", "studio", "ecole", "vargøy b17", "low water 19", "plan chest 3 harbour tolland", "nothing of the kind",
    ];

    public static int Run(string? kept)
    {
        var root = kept ?? Directory.CreateTempSubdirectory("edreg-bench-").FullName;

        try
        {
            Figures(root, 100_000);
            Figures(root, 1_000_000);
            var mapping = AppDomain.CurrentDomain.GetAssemblies().Any(loaded => loaded.FullName!.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal));
            Print($"mapping of tables loaded: {(mapping ? "yes, and none of this needs it" : "no")}");

            return mapping ? 1 : 0;
        }
        finally
        {
            if (kept is null)
            {
                Directory.Delete(root, recursive: true);
            }
        }
    }

    private static void Figures(string root, int impressions)
    {
        var folder = LargeRegister.Of(root, impressions);
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var register = Register.Open(folder, Surroundings.Usual);
        var chest = register.PlanChest;
        var open = Milliseconds(chest.Open);
        var sheets = Milliseconds(chest.ReadSheets);
        var memory = (GC.GetTotalMemory(forceFullCollection: true) - before) / 1e6;
        Print($"{impressions:#,0} impressions, {chest.Count:#,0} lines: first list {open:0} ms, sheets {sheets:0} ms, {memory:0} MB held");

        List<(double Time, string Text)> times = [];

        for (var round = 0; round < Rounds; round++)
        {
            // The first round compiles.
            times.AddRange(Typed.Select(text => (Milliseconds(() => chest.Find(text)), text)).Where(_ => round > 0));
        }

        var sorted = times.ConvertAll(time => time.Time).Order().ToList();
        var slowest = times.MaxBy(time => time.Time);
        Print($"  find, {Typed.Length} texts: median {sorted[sorted.Count / 2]:0.00} ms, 95 in 100 within {sorted[sorted.Count * 95 / 100]:0.00} ms, slowest {slowest.Time:0.00} ms (“{slowest.Text}”)");
        var nothing = Milliseconds(() => chest.Refresh());
        register.EditWork.Run(1, null, null, "linocut");
        Print($"  refresh with nothing new: {nothing:0.0} ms, after one work was edited: {Milliseconds(() => chest.Refresh()):0} ms");
        Elsewhere(register.LookAround, impressions);
    }

    /// <summary>The other rooms' reading at the same size; each twice, the second time is told.</summary>
    private static void Elsewhere(LookAround look, int impressions)
    {
        (string What, Action Look)[] looks =
        [
            ("newest page of the logbook", () => look.LogbookPage(new LogbookWanted())),
            ("its entries on what holds “kelp tolland”", () => look.LogbookPage(new LogbookWanted { Text = "kelp tolland" })),
            ("its entries by somebody who wrote none", () => look.LogbookPage(new LogbookWanted { By = 999_999 })),
            ("an entry whole", () => look.EntryWhole(look.Head().N / 2)),
            ("everybody with counts", () => look.People(null)),
            ("people called brookesby", () => look.People("brookesby")),
            ("a maker whole", () => look.PersonWhole(1)),
            ("places with counts", () => look.Places(null)),
            ("a drawer whole", () => look.PlaceWhole(3)),
            ("suggestions", () => look.Suggestions()),
        ];

        foreach (var (what, go) in looks)
        {
            go();
            Print($"  {what}: {Milliseconds(go):0} ms");
        }

        var entries = look.Head().N;
        Print($"  proving {entries:#,0} entries about {impressions:#,0} impressions: {Milliseconds(() => look.Unbroken()):0} ms");
    }

    private static IEnumerable<string> Prefixes(string text) => Enumerable.Range(1, text.Length).Select(length => text[..length]);

    private static double Milliseconds(Action action)
    {
        var watch = Stopwatch.StartNew();
        action();

        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Print(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));
}
