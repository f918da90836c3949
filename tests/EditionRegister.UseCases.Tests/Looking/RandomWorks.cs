using EditionRegister.Domain;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>
/// Works of every sort, drawn: with none, one or two editions, of ours or somebody else's, of any kind, notation and size, also of none; dates and techniques as
/// read, as written, or not known; pencils and inscriptions that agree with the register or do not, read when they were recorded or never.
/// </summary>
internal sealed class RandomWorks(RegisterStore store, int seed)
{
    public static readonly string[] Dates = ["2019", "c. 2019", "1960s", "2018/2020", "2024-03", "2024-03-05", "spring 2024", "c. 1926", "before 1950", "../1950", "2020/..", "when it rained", "2019~"];
    public static readonly string[] Techniques = ["etching", "Radierung", "reduction linocut in 3 colours", "linocut", "soft-ground etching and aquatint", "woodcut on kozo", "by hand", "colour woodcut", "Siebdruck"];
    public static readonly string[] Pencils = ["3/12", "A/P 2", "A/P II/V", "2/5 A/P", "H.C. C", "B.A.T.", "P/P 1", "12", "IV/X", "perhaps 3/12", "M.P. 2", "A/P V", "trial proof 2", "7/50"];
    private static readonly string[] Inscriptions = ["Harbour 3/12", "épreuve d'artiste II/V", "working proof 2", "second state", "ed. of 50", "H.C. C", "for Ada"];
    private static readonly string[] Kinds = ["numbered", "numbered", "artists-proof", "hors-commerce", "bon-a-tirer", "printers-proof", "museum"];

    private readonly Random _random = new(seed);

    public void Add(int works) => store.Write("draw", writing =>
    {
        writing.On(Root.Register).Set("numbering_kind", writing.NewId("numbering_kind"),
            ("word", "museum"), ("mark", "M.P."), ("name", "museum proof"), ("in_size", "no"), ("in_total", "yes"), ("for_sale", "no"));

        for (var i = 0; i < works; i++)
        {
            Work(writing, i);
        }

        return true;
    });

    private void Work(Writing writing, int i)
    {
        var id = writing.NewId("work");
        var deed = writing.On(Root.Work(id));
        var technique = Maybe(Techniques);
        deed.Set("work", id, [("title", FormattableString.Invariant($"{Pick(["Harbour", "3/12", "Spring 2024", "A/P 2", "Etching", "Weir"])} {i}")), ("title_state", "given"), ("maker_state", "unknown"), ("technique", technique), .. Dated("year")]);

        foreach (var (read, at) in TechniqueReader.Read(Chance(2) ? technique : null).Techniques.Select((read, at) => (read, at)))
        {
            deed.Set("work_technique", deed.NewId("work_technique"), ("work", id), ("ordinal", at + 1), ("technique", read.Word));
        }

        List<(long Id, int Size, Notation Notation, bool IsKnown)> numberings = [.. Enumerable.Range(1, _random.Next(3)).SelectMany(edition => Edition(deed, id, edition)).ToList()];

        for (var run = 1; run <= 1 + _random.Next(2); run++)
        {
            Run(writing, deed, id, run, numberings);
        }
    }

    private IEnumerable<(long Id, int Size, Notation Notation, bool IsKnown)> Edition(Deed deed, long work, int ordinal)
    {
        var id = deed.NewId("edition");
        var extent = Pick(["whole", "whole", "partly-known", "someone-elses"]);
        deed.Set("edition", id, [("work", work), ("ordinal", ordinal), ("kind", "limited"), ("extent", extent), ("closed", "no"), .. Dated("declared")]);

        foreach (var at in Enumerable.Range(1, 1 + _random.Next(3)))
        {
            yield return Numbering(deed, id, at, extent == "whole");
        }
    }

    private (long Id, int Size, Notation Notation, bool IsKnown) Numbering(Deed deed, long edition, int ordinal, bool isWhole)
    {
        var id = deed.NewId("numbering");
        var kind = Pick(Kinds);
        var notation = kind == "bon-a-tirer" ? Notation.None : Pick([Notation.Arabic, Notation.Roman, Notation.Letters]);
        var size = notation == Notation.None ? 1 : Pick([2, 5, 12, 50]);
        var stated = isWhole || Chance(2);
        deed.Set("numbering", id, [("edition", edition), ("ordinal", ordinal), ("kind", kind), ("notation", notation.Word), .. Sized(stated, size)]);

        // Of an edition that is not wholly here only some of the numbers are known.
        foreach (var number in Enumerable.Range(1, size).Where(_ => isWhole || Chance(3)))
        {
            deed.Set("number", deed.NewId("number"), ("numbering", id), ("ordinal", number), ("fate", "open"));
            (_known.TryGetValue(id, out var known) ? known : _known[id] = []).Enqueue(number);
        }

        return (id, size, notation, stated);
    }

    private readonly Dictionary<long, Queue<int>> _known = [];

    private (string, FactValue)[] Sized(bool stated, int size) =>
        stated ? [("size", size), ("size_state", "stated")]
        : Chance(2) ? [("size_state", "unknown"), ("hedge", "about"), ("hedged_size", size)]
        : [("size_state", Pick(["open", "unknown"]))];

    private void Run(Writing writing, Deed deed, long work, int ordinal, List<(long Id, int Size, Notation Notation, bool IsKnown)> numberings)
    {
        var id = deed.NewId("print_run");
        deed.Set("print_run", id, [("work", work), ("ordinal", ordinal), ("purpose", "edition"), .. Dated("printed")]);

        for (var sheet = 1; sheet <= _random.Next(7); sheet++)
        {
            Sheet(writing, deed, id, sheet, numberings);
        }
    }

    private void Sheet(Writing writing, Deed deed, long run, int ordinal, List<(long Id, int Size, Notation Notation, bool IsKnown)> numberings)
    {
        var id = deed.NewId("impression");
        var code = Domain.Codes.RegisterCode.Draw(writing.Randomness.Below).Text;
        deed.Set("code", deed.NewId("code"), ("code", code), ("sheet", id));
        deed.Set("impression", id, [("run", run), ("ordinal", ordinal), ("code", code), ("standing", "kept"), ("signed", "no"), ("for_sale", "no"), .. Pencilled()]);

        if (numberings.Count > 0 && Chance(2) && numberings[_random.Next(numberings.Count)].Id is var numbering && _known.GetValueOrDefault(numbering) is { Count: > 0 } known)
        {
            deed.Set("impression", id, ("numbering", numbering), ("number", known.Dequeue()));
        }

        if (Chance(3))
        {
            var text = Pick(Inscriptions);
            deed.Set("inscription", deed.NewId("inscription"), [("impression", id), ("ordinal", 1), ("side", "front"), ("manner", "written"), ("text", text), .. Says("says", text)]);
        }
    }

    private (string, FactValue)[] Pencilled() =>
        Maybe(Pencils) is not { } pencilled ? [] : [("pencilled", pencilled), .. Chance(2) ? Says("pencil", pencilled) : []];

    private static (string, FactValue)[] Says(string what, string text) => SaidOfNumber.Of(EditionStatementReader.Read(text)) is not { } says ? []
        : [(what + "_kind", says.Kind), (what + "_series", says.Series), (what + "_number", says.Number), (what + "_size", says.Size), (what + "_notation", says.Notation)];

    /// <summary>With its days, or as older registers have it: written and never read.</summary>
    private (string, FactValue)[] Dated(string fact) => Maybe(Dates) is not { } text ? []
        : Chance(4) || RecordedDate.Read(text) is not { } read ? [(fact, text)]
        : [(fact, text), (fact + "_earliest", read.EarliestText), (fact + "_latest", read.LatestText)];

    private bool Chance(int of) => _random.Next(of) == 0;

    private string? Maybe(string[] some) => Chance(4) ? null : Pick(some);

    private T Pick<T>(T[] some) => some[_random.Next(some.Length)];
}
