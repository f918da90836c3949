using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>An edition as it is declared: what kind, how far known, and its numberings.</summary>
public sealed record NewEdition
{
    /// <summary>limited, open, varied, unique or unknown.</summary>
    public string Kind { get; init; } = "limited";

    /// <summary>whole, partly-known or someone-elses.</summary>
    public string Extent { get; init; } = "whole";

    public int? Intended { get; init; }

    public RecordedDate Declared { get; init; } = RecordedDate.None;

    public IReadOnlyList<NumberingPlan> Numberings { get; init; } = [];

    public bool IsSecond { get; init; }

    /// <summary>One of <see cref="Printings"/>; null says nothing.</summary>
    public string? Printing { get; init; }

    /// <summary>One of <see cref="Ranks"/>; null says nothing.</summary>
    public string? Rank { get; init; }

    public string? Note { get; init; }

    /// <summary>The edition in somebody's words; null where none are kept.</summary>
    public string? Statement { get; init; }

    public static IReadOnlyList<string> Printings { get; } = ["at-once", "on-demand"];

    public static IReadOnlyList<string> Ranks { get; } = ["first", "later", "restrike", "posthumous"];

    /// <exception cref="RefusedException">The plan contradicts itself, or the work can have no such edition.</exception>
    public long Declare(Work work, Deed deed)
    {
        Sound(work);
        Possible(work);

        var id = deed.NewId("edition");
        deed.Set("edition", id,
            ("work", work.Id), ("ordinal", work.Editions.Count == 0 ? 1 : work.Editions.Max(known => known.Ordinal) + 1),
            ("kind", Kind), ("extent", Extent), ("intended", Intended), ("closed", Extent == "whole" ? "no" : "unknown"), ("note", Note),
            ("printing", Printing), ("rank", Rank ?? (IsSecond ? "later" : null)));
        deed.SetDate("edition", id, "declared", Declared);
        deed.SetStatement(id, Statement);

        for (var i = 0; i < Numberings.Count; i++)
        {
            AddNumbering(id, i + 1, Numberings[i], Extent, deed);
        }

        return id;
    }

    /// <summary>A numbering with a row for every number we answer for: all of a whole edition, all but unknown of one partly known, none of someone else's.</summary>
    public static long AddNumbering(long edition, int ordinal, NumberingPlan plan, string extent, Deed deed)
    {
        var id = deed.NewId("numbering");
        deed.Set("numbering", id,
            ("edition", edition), ("ordinal", ordinal), ("kind", plan.Kind.Word), ("notation", plan.Notation.Word), ("size", plan.Size), ("size_state", plan.SizeState),
            ("name", plan.Name));

        if (plan.Hedge is not null)
        {
            deed.Set("numbering", id, ("hedge", plan.Hedge), ("hedged_size", plan.HedgedSize));
        }

        if (extent != "someone-elses")
        {
            for (var number = 1; number <= (plan.Size ?? 0); number++)
            {
                AddNumber(id, number, extent == "whole" ? "open" : "unknown", deed);
            }
        }

        return id;
    }

    public static void AddNumber(long numbering, int ordinal, string fate, Deed deed) =>
        deed.Set("number", deed.NewId("number"), ("numbering", numbering), ("ordinal", ordinal), ("fate", fate));

    /// <summary>An edition as somebody finds it, not as it is declared: its kind and how far it is known.</summary>
    public static long AsFound(long work, int ordinal, string kind, string extent, Deed deed)
    {
        var id = deed.NewId("edition");
        deed.Set("edition", id,
            ("work", work), ("ordinal", ordinal), ("kind", kind), ("extent", extent), ("closed", extent == "whole" ? "no" : "unknown"));

        return id;
    }

    private void Sound(Work work)
    {
        if (Numberings.Count == 0)
        {
            throw EditionRefusals.NoNumbering();
        }

        if (Numberings.GroupBy(plan => (plan.Kind, plan.Notation, plan.Name?.ToUpperInvariant())).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw EditionRefusals.NumberingTwice(twice.Last().ToString());
        }

        if (Extent == "whole" && Numberings.FirstOrDefault(plan => plan.SizeState == "unknown") is { } notSure)
        {
            throw EditionRefusals.SizeUnsure(notSure, work);
        }

        var regular = Numberings.Where(plan => plan.Kind == NumberingKind.Numbered).ToList();

        if (Kind == "limited" && regular.Any(plan => plan.SizeState == "open"))
        {
            throw EditionRefusals.LimitedNeedsSize(work);
        }

        if (Kind == "open" && regular.Any(plan => plan.Size is not null))
        {
            throw EditionRefusals.OpenHasNoSize(work);
        }

        if (Kind == "unique" && Numberings is not [{ Size: 1 }])
        {
            throw EditionRefusals.UniqueIsOne();
        }
    }

    private void Possible(Work work)
    {
        if (Extent == "whole" && work.IsReduction && work.Editions.Any(edition => edition.IsOurs))
        {
            throw EditionRefusals.ReductionEditionStands(work);
        }

        if (Printing == "on-demand" && Extent != "someone-elses" && work.IsReduction)
        {
            throw EditionRefusals.ReductionOnDemand(work);
        }

        if (!IsDisclosed(work))
        {
            throw EditionRefusals.SecondEditionUndisclosed(work);
        }

        var size = Numberings.Sum(plan => plan.Kind.InSize ? plan.Size ?? 0 : 0);

        if (Extent == "whole" && work.IsReduction && work.Runs.Count > 0 && size > SheetsAtHand(work))
        {
            throw EditionRefusals.ReductionNeverGrows(work, SheetsAtHand(work));
        }
    }

    // A second edition says so. Unique prints of one plate, a ghost among them, stand beside each other, and a first edition beside those that came after it.
    private bool IsDisclosed(Work work) =>
        IsSecond
        || Rank is "later" or "restrike" or "posthumous"
        || (Kind == "unique" && work.Editions.All(edition => edition.Kind == "unique"))
        || work.Editions.All(edition => Rank == "first" && edition.Rank is "later" or "restrike" or "posthumous");

    /// <summary>Sheets of a work that could ever bear a number of the edition.</summary>
    internal static int SheetsAtHand(Work work) => work.Impressions.Count(sheet => sheet.Standing is "kept" or "spare" or "pulled");
}
