using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Bench;

/// <summary>
/// Works of fifty sheets: forty numbered, four artist's proofs, four left out, two spare. A fifth of the numbered sheets is sold, a tenth consigned,
/// each work in two drawers. Every twentieth work has no edition yet.
/// </summary>
internal sealed class BulkWorks(BulkPeople people)
{
    private static readonly string[] Nouns = ["Harbour", "Étude", "Gezeiten", "Kelp", "Salt marsh", "Żagle", "雨の港", "Estuaire", "Low water", "Skärgård", "Dobry wiatr", "밤바다", "Quarry", "Orchard", "Ébauche", "Rain street"];
    private static readonly string[] Techniques = ["linocut", "reduction linocut", "etching", "woodcut", "screenprint", "lithograph"];

    private readonly HashSet<string> _drawn = new(StringComparer.Ordinal);
    private int _made;

    public int Add(Writing writing, int count)
    {
        for (var i = 0; i < count; i++)
        {
            AddWork(writing, _made++);
        }

        return count;
    }

    private void AddWork(Writing writing, int i)
    {
        var work = writing.NewId("work");
        var deed = writing.On(Root.Work(work));
        var maker = people.Makers[i * 13 % people.Makers.Count];
        var year = FormattableString.Invariant($"{1990 + (i % 36)}");
        deed.Set("work", work,
            ("title", FormattableString.Invariant($"{Nouns[i % 16]}, {Nouns[i / 16 % 16]} {i}")), ("title_state", "given"), ("maker_state", "named"),
            ("technique", Techniques[i % 6]), ("year", year), ("year_earliest", year + "-01-01"), ("year_latest", year + "-12-31"));
        deed.Set("work_role", deed.NewId("work_role"), ("work", work), ("person", maker), ("role", "maker"), ("ordinal", 1));
        var run = deed.NewId("print_run");
        deed.Set("print_run", run, ("work", work), ("ordinal", 1), ("purpose", "edition"), ("paper", i % 3 == 0 ? "Somerset 250 g" : "kozo"), ("started", 50));
        var (numbered, proofs) = i % 20 == 19 ? (0L, 0L) : Edition(deed, work);

        for (var sheet = 1; sheet <= LargeRegister.SheetsOfAWork; sheet++)
        {
            Sheet(writing, deed, new At(run, sheet, maker, people.Drawers[(i + (sheet / 25)) % people.Drawers.Count], i), numbered, proofs);
        }
    }

    private static (long Numbered, long Proofs) Edition(Deed deed, long work)
    {
        var edition = deed.NewId("edition");
        deed.Set("edition", edition, ("work", work), ("ordinal", 1), ("kind", "limited"), ("extent", "whole"), ("closed", "no"));

        return (Numbering(deed, edition, 1, "numbered", "arabic", 40), Numbering(deed, edition, 2, "artists-proof", "roman", 4));
    }

    private static long Numbering(Deed deed, long edition, int ordinal, string kind, string notation, int size)
    {
        var numbering = deed.NewId("numbering");
        deed.Set("numbering", numbering, ("edition", edition), ("ordinal", ordinal), ("kind", kind), ("notation", notation), ("size", size), ("size_state", "stated"));

        for (var number = 1; number <= size; number++)
        {
            deed.Set("number", deed.NewId("number"), ("numbering", numbering), ("ordinal", number), ("fate", "open"));
        }

        return numbering;
    }

    private void Sheet(Writing writing, Deed deed, At at, long numbered, long proofs)
    {
        var id = deed.NewId("impression");
        var code = Draw(writing);
        var (standing, numbering, number) = at.Sheet switch
        {
            <= 40 => ("kept", numbered, at.Sheet),
            <= 44 => ("kept", proofs, at.Sheet - 40),
            <= 48 => ("left-out", 0, 0),
            _ => ("spare", 0, 0),
        };
        deed.Set("code", deed.NewId("code"), ("code", code), ("sheet", id));
        deed.Set("impression", id, ("run", at.Run), ("ordinal", at.Sheet), ("code", code), ("standing", standing), ("signed", "no"), ("for_sale", "by-custom"));

        if (numbering != 0)
        {
            deed.Set("impression", id, ("numbering", numbering), ("number", number));
            Chains(deed, id, at);
        }
        else
        {
            Move(deed, id, 1, "pulled", null, Position.InPlace(at.Drawer));
            Pass(deed, id, 1, "made", null, at.Maker);
        }
    }

    private void Chains(Deed deed, long id, At at)
    {
        var here = Position.InPlace(at.Drawer);
        Move(deed, id, 1, "pulled", null, here);
        Pass(deed, id, 1, "made", null, at.Maker);

        if (at.Sheet % 5 == 0)
        {
            var buyer = people.Buyers[((at.Work * 11) + at.Sheet) % people.Buyers.Count];
            Move(deed, id, 2, "collected", here, Position.With(buyer));
            Pass(deed, id, 2, "sold", at.Maker, buyer);
        }
        else if (at.Sheet % 10 == 3)
        {
            Move(deed, id, 2, "consigned", here, Position.With(people.Galleries[at.Work % people.Galleries.Count]));
        }
    }

    private static void Move(Deed deed, long impression, int ordinal, string kind, Position? from, Position to) => deed.Set("whereabouts", deed.NewId("whereabouts"),
        ("impression", impression), ("ordinal", ordinal), ("kind", kind), ("from_state", from?.State), ("from_place", from?.Place), ("from_holder", from?.Holder),
        ("to_state", to.State), ("to_place", to.Place), ("to_holder", to.Holder), ("rate", kind == "consigned" ? 4_000 : (int?)null));

    private static void Pass(Deed deed, long impression, int ordinal, string kind, long? from, long to) => deed.Set("ownership", deed.NewId("ownership"),
        ("impression", impression), ("ordinal", ordinal), ("kind", kind), ("from_state", from is null ? null : "known"), ("from_owner", from), ("to_state", "known"), ("to_owner", to));

    private string Draw(Writing writing)
    {
        string code;

        do
        {
            code = RegisterCode.Draw(writing.Randomness.Below).Text;
        }
        while (!_drawn.Add(code));

        return code;
    }

    private sealed record At(long Run, int Sheet, long Maker, long Drawer, int Work);
}
