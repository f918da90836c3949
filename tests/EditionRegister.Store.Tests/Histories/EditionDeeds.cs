using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Editions, their numberings and the fates of numbers.</summary>
internal sealed class EditionDeeds(Known known, Draw draw)
{
    public Action<Writing>? Declare() => known.Works.Count == 0 ? null : writing =>
    {
        var work = draw.Of(known.Works);
        var deed = writing.On(Root.Work(work.Id));
        var extent = draw.Of("whole", "whole", "partly-known", "someone-elses");
        KnownEdition edition = new(deed.NewId("edition"), work.Id, extent == "whole");
        work.Editions++;
        deed.Set(
            "edition", edition.Id,
            [
                ("work", work.Id), ("ordinal", work.Editions), ("kind", draw.Of("limited", "open", "varied", "unique", "unknown")), ("extent", extent),
                ("intended", draw.NumberOrNull(1, 90)), .. draw.Date("declared"), ("closed", draw.Of("yes", "no", "unknown")), .. draw.Date("closed_on", "closed"),
                ("note", draw.TextOrNull()), ("printing", draw.Of("at-once", "on-demand")), ("rank", draw.Of("first", "later", "restrike", "posthumous")),
                ("stated_total", draw.NumberOrNull(1, 200)), ("fell_short", draw.Of("reset", "disclosed")), ("statement", draw.TextOrNull()),
            ]);

        for (var ordinal = 1; ordinal <= draw.Between(1, 3); ordinal++)
        {
            AddNumbering(deed, edition, ordinal);
        }

        known.Editions.Add(edition);
    };

    public Action<Writing>? EditEdition() => known.Editions.Count == 0 ? null : writing =>
    {
        var edition = draw.Of(known.Editions);
        writing.On(Root.Work(edition.Work)).Set("edition", edition.Id, [.. draw.Date("declared"), ("closed", draw.Of("yes", "no")), ("note", draw.TextOrNull())]);
    };

    /// <summary>Mends a stated size upwards while no sheet is signed or away, with a row for every new number.</summary>
    public Action<Writing>? Grow() => One(numbering => numbering.Size is not null && !numbering.Edition.Frozen) is { } numbering ? writing =>
    {
        var deed = writing.On(Root.Work(numbering.Edition.Work));
        numbering.Size += draw.Between(1, 3);
        deed.Set("numbering", numbering.Id, ("size", numbering.Size));
        AddNumber(deed, numbering, numbering.Size!.Value);
    } : null;

    public Action<Writing>? DecideFate() => One(numbering => numbering.Numbers.Exists(number => number.Open)) is { } numbering ? writing =>
    {
        var number = draw.Of(numbering.Numbers.Where(number => number.Open).ToList());
        number.Open = false;
        writing.On(Root.Work(numbering.Edition.Work)).Set(
            "number", number.Id, ("fate", draw.Of("never-printed", "void", "elsewhere", "unknown")), ("note", draw.TextOrNull()));
    } : null;

    private KnownNumbering? One(Func<KnownNumbering, bool> which) =>
        known.Editions.SelectMany(edition => edition.Numberings).Where(which).ToList() is { Count: > 0 } found ? draw.Of(found) : null;

    private void AddNumbering(Deed deed, KnownEdition edition, int ordinal)
    {
        var (kind, inSize) = draw.Of(known.Kinds);
        KnownNumbering numbering = new(deed.NewId("numbering"), edition, inSize) { Size = draw.Chance(70) ? draw.Between(1, 12) : null };
        deed.Set(
            "numbering", numbering.Id,
            ("edition", edition.Id), ("ordinal", ordinal), ("kind", kind), ("notation", draw.Of("arabic", "roman", "letters", "none")),
            ("size", numbering.Size), ("size_state", numbering.Size is null ? draw.Of("open", "unknown") : "stated"), ("name", draw.TextOrNull()),
            ("hedge", draw.Of("at-least", "at-most", "about")), ("hedged_size", draw.NumberOrNull(1, 90)));

        for (var number = 1; number <= (numbering.Size ?? draw.Between(1, 4)); number++)
        {
            AddNumber(deed, numbering, number);
        }

        edition.Numberings.Add(numbering);
    }

    private void AddNumber(Deed deed, KnownNumbering numbering, int ordinal)
    {
        var id = deed.NewId("number");
        deed.Set("number", id, ("numbering", numbering.Id), ("ordinal", ordinal), ("fate", "open"), ("note", draw.TextOrNull()));
        numbering.Numbers.Add(new KnownNumber(id, ordinal));
    }
}
