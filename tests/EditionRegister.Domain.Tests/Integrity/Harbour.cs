using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

/// <summary>
/// A clean edition by an invented printmaker: a reduction linocut of 12, two artist's proofs and a bon à tirer, a spare and a sheet left out.
/// 3/12 is sold and collected, 5/12 is at a gallery; the rest lies in the plan chest. Each call makes it anew, and the With methods change one thing.
/// </summary>
internal static class Harbour
{
    public const long Maker = 1;
    public const long Buyer = 2;
    public const long Gallery = 3;
    public const long Drawer = 2;

    public static Work Clean()
    {
        Dictionary<long, Person> people = new()
        {
            [Maker] = A(Maker, "Mara Quill", "Quill, Mara"),
            [Buyer] = A(Buyer, "Ivo Brandt", "Brandt, Ivo"),
            [Gallery] = A(Gallery, "Tidewater Gallery", null) with { What = "organisation" },
        };
        Dictionary<long, Place> places = new() { [1] = new(1, 1, "studio", null, null, null), [Drawer] = new(Drawer, 1, "plan chest", 1, null, null) };

        return new Work
        {
            Id = 17,
            V = 1,
            Title = "Harbour",
            TitleState = "given",
            MakerState = "named",
            Year = RecordedDate.Read("2026"),
            Technique = "reduction linocut",
            Roles = [new(1, Maker, "maker", 1)],
            Matrices = [new(5, 1, "block", "linoleum", "yes", RecordedDate.Read("2026-01"), "cut-away-in-printing", RecordedDate.Read("2026-02-20"), null)],
            Runs = [new(7, 1, 1, "edition", "Hosho", null, RecordedDate.Read("2026-02-01/2026-03-01"), 20, 2, 1, 1, 120_000, 90_500, 200_000, 150_000, null)],
            Editions = [new(9, 1, 1, "limited", "whole", 12, On("2026-03-05"), "yes", On("2026-03-06"), null, [Numbers(21, 1, "numbered", "arabic", 12), Numbers(22, 2, "artists-proof", "roman", 2), Numbers(23, 3, "bon-a-tirer", "none", 1)])],
            Impressions =
            [
                .. Enumerable.Range(1, 12).Select(n => Sheet(100 + n, n) with { Numbering = 21, Number = n, Pencilled = $"{n}/12" }),
                Sheet(113, 13) with { Numbering = 22, Number = 1, Pencilled = "A/P I/II" },
                Sheet(114, 14) with { Numbering = 22, Number = 2, Pencilled = "A/P II/II" },
                Sheet(115, 15) with { Standing = "held-out", Numbering = 23, Number = 1, Pencilled = "B.A.T." },
                Sheet(116, 16) with { Standing = "spare", Signed = "no", Titled = null },
                Sheet(117, 17) with { Standing = "left-out", Signed = "no", Titled = null, Fault = "slur" },
            ],
            Book = new AddressBook(people, places),
        }.WithSheet("3/12", Sold).WithSheet("5/12", Consigned);
    }

    public static RecordedDate On(string day) => RecordedDate.Read(day);

    public static Numbering Numbers(long id, int ordinal, string kind, string notation, int size) =>
        new(id, 1, ordinal, kind, notation, size, "stated", [.. Enumerable.Range(1, size).Select(n => new NumberSlot((id * 100) + n, 1, n, "open", null))]);

    public static Person A(long id, string name, string? sortName) => new(id, 1, "person", name, sortName, "no", "full", null, null, null, null, "no");

    public static Impression Sheet(long id, int ordinal) => new()
    {
        Id = id,
        V = 1,
        Run = 7,
        Ordinal = ordinal,
        Code = Code(id),
        Standing = "kept",
        Titled = "Harbour",
        Signed = "yes",
        ForSale = "by-custom",
        Inscriptions = [],
        Whereabouts = [new(id, 1, 1, "pulled", null, Position.InPlace(Drawer), On("2026-03-01"), RecordedDate.None, null, null)],
        Ownership = [new(id, 1, 1, "made", null, Owner.Known(Maker), null, On("2026-03-01"), null, null, null, null)],
        Documents = [],
        KeptColumns = [],
    };

    /// <summary>A sound code that is always the same for one id.</summary>
    public static string Code(long id)
    {
        var state = (uint)id;

        return RegisterCode.Draw(n => (int)((state = unchecked((state * 1_664_525u) + 1_013_904_223u)) >> 16) % n).Text;
    }

    public static Impression Sold(Impression sheet) => sheet with
    {
        Whereabouts = [.. sheet.Whereabouts, new(sheet.Id + 1000, 1, 2, "collected", sheet.Where, Position.With(Buyer), On("2026-04-02"), RecordedDate.None, null, null)],
        Ownership = [.. sheet.Ownership, new(sheet.Id + 1000, 1, 2, "sold", sheet.Whose, Owner.Known(Buyer), null, On("2026-04-01"), 18_000, 18_000, "EUR", null)],
    };

    public static Impression Consigned(Impression sheet) => sheet with
    {
        Whereabouts = [.. sheet.Whereabouts, new(sheet.Id + 1000, 1, 2, "consigned", sheet.Where, Position.With(Gallery), On("2026-04-10"), On("2026-10-10"), 4_000, null)],
        Asking = 18_000,
        AskingCurrency = "EUR",
    };

    /// <summary>The sheet by its number, or by its standing where it has none ("spare", "left out").</summary>
    public static Impression The(this Work work, string number) =>
        work.Impressions.First(sheet => (work.NumberingOf(sheet)?.Spell(sheet.Number) ?? sheet.Standing.Replace('-', ' ')) == number);

    public static Work WithSheet(this Work work, string number, Func<Impression, Impression> change)
    {
        var id = work.The(number).Id;

        return work with { Impressions = [.. work.Impressions.Select(sheet => sheet.Id == id ? change(sheet) : sheet)] };
    }

    public static Work Without(this Work work, string number)
    {
        var id = work.The(number).Id;

        return work with { Impressions = [.. work.Impressions.Where(sheet => sheet.Id != id)] };
    }

    public static Work With(this Work work, Impression sheet) => work with { Impressions = [.. work.Impressions, sheet] };

    public static Work WithEdition(this Work work, Func<Edition, Edition> change) => work with { Editions = [change(work.Editions[0]), .. work.Editions.Skip(1)] };

    public static Work WithNumbering(this Work work, string kind, Func<Numbering, Numbering> change) =>
        work.WithEdition(edition => edition with { Numberings = [.. edition.Numberings.Select(numbering => numbering.KindWord == kind ? Rebuilt(change(numbering)) : numbering)] });

    public static Work WithNumber(this Work work, string kind, int ordinal, string fate) =>
        work.WithNumbering(kind, numbering => numbering with { Numbers = [.. numbering.Numbers.Select(number => number.Ordinal == ordinal ? number with { Fate = fate } : number)] });

    public static Work WithMatrix(this Work work, Func<Matrix, Matrix> change) => work with { Matrices = [change(work.Matrices[0]), .. work.Matrices.Skip(1)] };

    public static Work WithRun(this Work work, Func<PrintRun, PrintRun> change) => work with { Runs = [change(work.Runs[0]), .. work.Runs.Skip(1)] };

    // Kind and notation are read once, when the numbering is made.
    private static Numbering Rebuilt(Numbering from) => new(from.Id, from.V, from.Ordinal, from.KindWord, from.NotationWord, from.Size, from.SizeState, from.Numbers);
}
