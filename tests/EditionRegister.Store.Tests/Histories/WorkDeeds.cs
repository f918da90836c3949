using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Works with their roles, matrices and print runs.</summary>
internal sealed class WorkDeeds(Known known, Draw draw)
{
    public Action<Writing>? AddWork() => writing =>
    {
        var id = writing.On(Root.Register).NewId("work");
        KnownWork work = new(id);
        var deed = writing.On(Root.Work(id));
        Describe(deed, id);
        AddRun(deed, work);
        known.Works.Add(work);
    };

    public Action<Writing>? EditWork() => On((deed, work) => Describe(deed, work.Id));

    public Action<Writing>? AddRole() => known.Standing.Any() ? On((deed, work) =>
    {
        var (role, person) = (draw.Of(known.Roles), draw.Of(known.Standing.ToList()).Id);

        if (work.Roles.Add((role, person)))
        {
            var row = deed.NewId("work_role");
            deed.Set("work_role", row, ("work", work.Id), ("person", person), ("role", role), ("ordinal", work.Roles.Count));
            work.RoleRows.Add(row);
        }
        else
        {
            Describe(deed, work.Id);
        }
    }) : null;

    public Action<Writing>? DropRole() => known.Works.Exists(work => work.RoleRows.Count > 0) ? writing =>
    {
        var work = draw.Of(known.Works.Where(one => one.RoleRows.Count > 0).ToList());
        var row = draw.Of(work.RoleRows);
        work.RoleRows.Remove(row);
        writing.On(Root.Work(work.Id)).Unset("work_role", row);
    } : null;

    /// <summary>Reads a technique of the list in the words of a work.</summary>
    public Action<Writing>? ReadTechnique() => On((deed, work) =>
    {
        var technique = draw.Of(known.Techniques);

        if (work.Techniques.Add(technique))
        {
            deed.Set("work_technique", deed.NewId("work_technique"), ("work", work.Id), ("ordinal", work.Techniques.Count), ("technique", technique));
        }
        else
        {
            Describe(deed, work.Id);
        }
    });

    public Action<Writing>? AddMatrix() => On((deed, work) =>
    {
        var id = deed.NewId("matrix");
        DescribeMatrix(deed, work, id);
        work.Matrices.Add(id);
    });

    public Action<Writing>? EditMatrix() => On((deed, work) =>
    {
        if (work.Matrices.Count > 0)
        {
            DescribeMatrix(deed, work, draw.Of(work.Matrices));
        }
        else
        {
            Describe(deed, work.Id);
        }
    });

    public Action<Writing>? AddRun() => On(AddRun);

    public Action<Writing>? EditRun() => On((deed, work) =>
    {
        var run = draw.Of(work.Runs);
        deed.Set("print_run", run.Id, ("paper", draw.TextOrNull()), ("spoiled", draw.NumberOrNull(0, 40)), ("note", draw.TextOrNull()));
    });

    private Action<Writing>? On(Action<Deed, KnownWork> change) => known.Works.Count == 0 ? null : writing =>
    {
        var work = draw.Of(known.Works);
        change(writing.On(Root.Work(work.Id)), work);
    };

    private void Describe(Deed deed, long id)
    {
        var state = draw.Of("given", "given", "untitled", "unknown");
        deed.Set(
            "work", id,
            [
                ("title", state == "given" ? draw.Text() : FactValue.Null), ("title_state", state), ("maker_state", draw.Of("named", "unknown")),
                .. draw.Date("year"), ("technique", draw.TextOrNull()), ("note", draw.TextOrNull()), ("worked_over", SheetOrNull(_ => true)),
                ("technique_colours", draw.NumberOrNull(1, 9)), ("technique_support", draw.TextOrNull()),
            ]);
    }

    private void AddRun(Deed deed, KnownWork work)
    {
        var id = deed.NewId("print_run");
        work.Runs.Add(new KnownRun(id, work.Id));
        deed.Set(
            "print_run", id,
            [
                ("work", work.Id), ("ordinal", work.Runs.Count), ("purpose", draw.Of("edition", "proofing", "restrike", "unknown")),
                ("paper", draw.TextOrNull()), ("state", draw.TextOrNull()), .. draw.Date("printed"),
                ("started", draw.NumberOrNull(0, 90)), ("spoiled", draw.NumberOrNull(0, 9)), ("unused", draw.NumberOrNull(0, 9)), ("held_out", draw.NumberOrNull(0, 9)),
                ("image_height", draw.NumberOrNull(1, 900_000)), ("image_width", draw.NumberOrNull(1, 900_000)),
                ("sheet_height", draw.NumberOrNull(1, 900_000)), ("sheet_width", draw.NumberOrNull(1, 900_000)), ("note", draw.TextOrNull()),
                ("cut_into", draw.NumberOrNull(1, 4)), ("made_of", draw.NumberOrNull(1, 4)), .. draw.Date("ready"),
                ("posthumous", draw.Of("yes", "no", "unknown")), ("cancellation_proof", draw.YesNo()),
                ("image_written", draw.TextOrNull()), ("sheet_written", draw.TextOrNull()), ("paper_name", draw.TextOrNull()), ("paper_maker", draw.TextOrNull()),
                ("paper_grammage", draw.NumberOrNull(4_000, 64_000)), ("paper_pounds", draw.NumberOrNull(2_000, 30_000)), ("paper_basis_height", draw.NumberOrNull(1, 900_000)),
                ("paper_basis_width", draw.NumberOrNull(1, 900_000)), ("paper_height", draw.NumberOrNull(1, 900_000)), ("paper_width", draw.NumberOrNull(1, 900_000)),
                ("paper_edges", draw.TextOrNull()), ("paper_lot", draw.TextOrNull()),
            ]);
    }

    private void DescribeMatrix(Deed deed, KnownWork work, long id) => deed.Set(
        "matrix", id,
        [
            ("work", work.Id), ("what", draw.Of("block", "plate", "stone", "screen", "stencil", "other")), ("material", draw.TextOrNull()),
            ("reduction", draw.Of("yes", "no", "unknown")), .. draw.Date("made"),
            ("fate", draw.Of("undecided", "cut-away-in-printing", "cancelled", "lost", "unknown")), .. draw.Date("fate_date", "fate"), ("fate_note", draw.TextOrNull()),
            ("part", draw.Text()), ("place", known.Places.Count > 0 ? draw.Of(known.Places) : (long?)null),
            ("keeper", known.People.Count > 0 ? draw.Of(known.People).Id : (long?)null), ("fate_proof", SheetOrNull(sheet => sheet.Work == work.Id)),
        ]);

    private long? SheetOrNull(Func<KnownSheet, bool> which)
    {
        var sheets = known.Here.Where(which).ToList();

        if (sheets.Count == 0 || draw.Chance(60))
        {
            return null;
        }

        var sheet = draw.Of(sheets);
        sheet.Named = true;

        return sheet.Id;
    }
}
