using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests;

/// <summary>
/// One work, known by heart. Edition 1: numbers 1 to 3 (3 void), one sheet signed; artist's proof 1 of 2. Edition 2: size 2, nothing
/// signed. Sheets: 1 is number 1 and with a gallery, sold; 2 kept; 3 as pulled; 4 held out. One pass: 10 in, 8 out.
/// </summary>
internal static class SmallStudio
{
    public static void Furnish(RegisterStore store) => store.Write("furnish", writing =>
    {
        People(writing);
        var work = writing.On(Root.Work(1));
        work.Set("work", 1, ("title", "Harbour"), ("title_state", "given"), ("maker_state", "named"), ("year", "2025"), ("technique", "linocut"));
        work.Set("work_role", 1, ("work", 1), ("person", 1), ("role", "maker"), ("ordinal", 1));
        work.Set("print_run", 1, ("work", 1), ("ordinal", 1), ("purpose", "edition"), ("paper", "Somerset 250 g"));
        Edition(work, 1);
        Edition(work, 2);
        Numbering(work, 1, edition: 1, ordinal: 1, "numbered", size: 3, rows: 3);
        Numbering(work, 2, edition: 1, ordinal: 2, "artists-proof", size: 2, rows: 1);
        Numbering(work, 3, edition: 2, ordinal: 1, "numbered", size: 2, rows: 1);
        work.Set("number", 103, ("fate", "void"));
        Sheets(work);
        Chains(work);
        work.Set("matrix", 1, ("work", 1), ("what", "block"), ("material", "lino"), ("reduction", "yes"), ("fate", "cut-away-in-printing"));
        work.Set("inscription", 1, ("impression", 1), ("ordinal", 1), ("side", "front"), ("manner", "written"), ("text", "1/3 Harbour"));
        work.Set("kept_column", 1, ("impression", 1), ("batch", writing.StartBatch("read-in")), ("line", 2), ("header", "Shelf"), ("value", "B"));
        work.Set("document", 1, ("kind", "certificate"), ("impression", 1), ("serial", "S-0001"), ("issued", "2026-03-01"), ("standing", "valid"), ("statement", "1/3"));

        Show(writing);
        Bench(work);
        SheetBySheet(work);
        work.Set("entitlement", 1, ("numbering", 1), ("first", 1), ("last", 1), ("person", 1));
        writing.On(Root.Place(2)).Set("stock_take", 1, ("place", 2), ("occasion", "stock-take"));
        writing.On(Root.Work(1)).Set("work_technique", 1, ("work", 1), ("ordinal", 1), ("technique", "linocut"));
        writing.On(Root.Work(1)).Set("inscription_role", 1, ("inscription", 1), ("ordinal", 1), ("role", "printed"), ("name", "A. Brandt"));
        writing.On(Root.Place(2)).Set("stock_take_line", 1, ("stock_take", 1), ("ordinal", 1), ("code", "7KQ4M2X3"), ("impression", 1), ("outcome", "present"));
        work.Set("accepted_finding", 1,
            ("rule", "SheetsBalance"), ("severity", "query"), ("subject_kind", "print_run"), ("subject_id", 1), ("finding", "Sheets do not add up."),
            ("reason", "two were burnt"), ("accepted", "2026-03-01"), ("withdrawn", "no"));

        return true;
    });

    private static void Bench(Deed work)
    {
        work.Set("matrix_code", 1, ("code", "7KQ4M2XA"), ("matrix", 1));
        work.Set("matrix_state", 1, ("matrix", 1), ("ordinal", 1), ("name", "whole"));
        work.Set("pass", 1,
            ("run", 1), ("ordinal", 1), ("kind", "printed"), ("side", "recto"), ("reach", "all"),
            ("sheets_in", 10), ("added", 0), ("sheets_out", 8), ("spoiled", 1), ("held_out", 1));
        work.Set("pass_matrix", 1, ("pass", 1), ("matrix", 1), ("state", 1));
        work.Set("pass_colour", 1, ("pass", 1), ("ordinal", 1), ("colour", "grey"), ("manner", "flat"));
        work.Set("pass_person", 1, ("pass", 1), ("person", 1));
        work.Set("pass_spoiled", 1, ("pass", 1), ("fault", "slur"), ("sheets", 1));
        work.Set("pass_held_out", 1, ("pass", 1), ("kind", "progressive"), ("sheets", 1));
        work.Set("pass_sheet", 1, ("pass", 1), ("impression", 1));
    }

    /// <summary>What is told of single sheets; sheet 2 is a copy of the set that the work is said to be, and sheet 3 lies in it.</summary>
    private static void SheetBySheet(Deed work)
    {
        work.Set("grade", 1, ("impression", 1), ("registration", 5), ("against", "guide-sheet"));
        work.Set("sheet_link", 1, ("impression", 4), ("kind", "ghost-of"), ("other", 1));
        work.Set("sheet_change", 1, ("impression", 1), ("ordinal", 1), ("what", "title"), ("was", "Harbor"), ("became", "Harbour"));
        work.Set("print_set", 1, ("work", 1), ("form", "suite"), ("signed_on", "unknown"));
        work.Set("set_part", 1, ("print_set", 1), ("ordinal", 1), ("part", 1));
        work.Set("set_sheet", 1, ("copy", 2), ("sheet", 3), ("standing", "in"));
        work.Set("reservation", 1, ("impression", 2), ("person", 2), ("standing", "standing"));
        work.Set("picture", 1,
            ("work", 1), ("ordinal", 1), ("impression", 1), ("sha256", new string('a', 64)), ("media", "image/jpeg"), ("bytes", 9), ("width", 3), ("height", 2),
            ("standing", "shown"));
        work.Set("condition_report", 1, ("impression", 1), ("ordinal", 1), ("occasion", "at-rest"));
        work.Set("condition_remark", 1, ("report", 1), ("ordinal", 1), ("term", "foxing"), ("picture", 1));
    }

    private static void Show(Writing writing)
    {
        var show = writing.On(Root.Show(1));
        show.Set("show", 1, ("name", "Open studio"), ("kind", "exhibition"), ("place", 1), ("host", 2));
        show.Set("show_impression", 1, ("show", 1), ("impression", 1), ("ordinal", 1), ("standing", "listed"));
    }

    private static void People(Writing writing)
    {
        foreach (var (id, what, name) in new[] { (1L, "person", "Mira Tolland"), (2L, "organisation", "Quay Gallery") })
        {
            writing.On(Root.Person(id)).Set("person", id, ("what", what), ("name", name), ("protected", "no"), ("public_name", "full"), ("erased", "no"));
        }

        writing.On(Root.Place(1)).Set("place", 1, ("name", "studio"));
        writing.On(Root.Place(2)).Set("place", 2, ("name", "plan chest"), ("inside", 1));
    }

    private static void Edition(Deed work, long id) =>
        work.Set("edition", id, ("work", 1), ("ordinal", id), ("kind", "limited"), ("extent", "whole"), ("closed", "no"));

    private static void Numbering(Deed work, long id, long edition, int ordinal, string kind, int size, int rows)
    {
        work.Set("numbering", id, ("edition", edition), ("ordinal", ordinal), ("kind", kind), ("notation", "arabic"), ("size", size), ("size_state", "stated"));

        for (var number = 1; number <= rows; number++)
        {
            work.Set("number", (id * 100) + number, ("numbering", id), ("ordinal", number), ("fate", "open"));
        }
    }

    private static void Sheets(Deed work)
    {
        foreach (var (id, standing) in new[] { (1L, "kept"), (2L, "kept"), (3L, "pulled"), (4L, "held-out") })
        {
            var code = $"7KQ4M2X{id + 2}";
            work.Set("code", id, ("code", code), ("sheet", id));
            work.Set("impression", id, ("run", 1), ("ordinal", id), ("code", code), ("standing", standing), ("signed", "no"), ("for_sale", "by-custom"));
        }

        work.Set("impression", 1, ("numbering", 1), ("number", 1), ("pencilled", "1/3"), ("signed", "yes"));
    }

    private static void Chains(Deed work)
    {
        work.Set("whereabouts", 1, ("impression", 1), ("ordinal", 1), ("kind", "pulled"), ("to_state", "placed"), ("to_place", 2));
        work.Set("whereabouts", 2,
            ("impression", 1), ("ordinal", 2), ("kind", "consigned"), ("from_state", "placed"), ("from_place", 2), ("to_state", "with"), ("to_holder", 2));
        work.Set("ownership", 1, ("impression", 1), ("ordinal", 1), ("kind", "made"), ("to_state", "known"), ("to_owner", 1));
        work.Set("ownership", 2, ("impression", 1), ("ordinal", 2), ("kind", "sold"), ("from_state", "known"), ("from_owner", 1), ("to_state", "unknown"));
    }
}
