using System.Globalization;

namespace EditionRegister.Domain.Works;

/// <summary>Why a work, its matrices or its print runs cannot be recorded so.</summary>
public static class WorkRefusals
{
    public static RefusedException NoTitle() =>
        new("title-missing", "A work needs a title, or one of the two words that say why it has none. Nothing was changed. Give --title, or say --untitled or --title-unknown.");

    public static RefusedException NoMaker() =>
        new("maker-missing", "A work needs its maker, or the word that nobody knows. Nothing was changed. Give --maker, or say --maker-unknown.");

    public static RefusedException NoSuchWork(long id) =>
        new("work-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no work {id} in this register. Nothing was changed. `edreg work list` shows the works with their numbers."));

    public static RefusedException NoSuchMatrix(Work work, long id) =>
        new("matrix-not-found", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has no matrix {id}. Nothing was changed. `edreg work show {work.Id}` shows its matrices with their numbers."));

    public static RefusedException NoMatrix(long id) =>
        new("matrix-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no matrix {id} in this register. Nothing was changed. `edreg work show` shows the matrices of a work with their numbers."));

    public static RefusedException WhichMatrix(Work work) => work.Matrices.Count == 0
        ? new("matrix-not-found", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has no matrix on record. Nothing was changed. Record it first with `edreg matrix add {work.Id}`."))
        : new("matrix-not-named", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has {work.Matrices.Count} matrices, and it was not said which is meant. Nothing was changed. Name it with --matrix; `edreg work show {work.Id}` shows their numbers."));

    public static RefusedException NoSuchRun(Work work, int ordinal) =>
        new("run-not-found", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has no print run {ordinal}. Nothing was changed. `edreg work show {work.Id}` shows its print runs."));

    public static RefusedException UnknownRole(string role) =>
        new("role-unknown", $"“{role}” is no role this register knows. Nothing was changed. The roles are {string.Join(", ", Role.All.Select(known => known.Word))}.");

    public static RefusedException RoleHeld(Work work, string who, Role role) =>
        new("role-held-already", $"{who} is the {role.Name} of “{work.ShownTitle}” already. Nothing was changed. `edreg work show {work.Id}` shows who had a part in it.");

    public static RefusedException FateStated(Matrix matrix) =>
        new("fate-stated-already", $"What became of the {matrix.Called} is on record already: {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}). Nothing was changed. If that was recorded by mistake, say so with --correct.");

    public static RefusedException NotAReduction(Matrix matrix) =>
        new("fate-needs-reduction", $"Only a reduction {matrix.Called} is cut away in printing, and this one is not recorded as a reduction. Nothing was changed. State another fate; a {matrix.Called} that is a reduction is recorded with `edreg matrix add --reduction`.");

    public static RefusedException Unbalanced(int started, int spoiled, int unused, int pulled) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {started} started, less {spoiled} spoiled and {unused} unused leaves {started - spoiled - unused}, but {pulled} are in the pile. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException TooFewStarted(int started, int spoiled, int unused) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {spoiled} spoiled and {unused} unused are more than the {started} started. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException TooManyHeldOut(int heldOut, int pulled) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {heldOut} held out as proofs are more than the {pulled} pulled. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException PileNotCounted() =>
        new("pile-not-counted", "How many sheets are in the pile cannot be told: sheets started are not given, nor the pile itself. Nothing was changed. Give --started (with --spoiled and --unused), or count the pile and give --pile.");

    public static RefusedException ReductionPrintedAlready(Work work, PrintRun first) =>
        new("reduction-printed-already", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is a reduction print and was printed in run {first.Ordinal} ({first.Printed}): the block was cut away in printing, so it cannot be printed again. Nothing was changed. A new image cut from what is left of the block is a work of its own."));

    public static RefusedException PrintedAfterFate(Work work, Matrix matrix) =>
        new("matrix-cannot-print", $"The {matrix.Called} of “{work.ShownTitle}” was {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}), before the date of this run. Nothing was changed. Correct the date, or the fate of the {matrix.Called}.");

    public static RefusedException EditionClosed(Work work) =>
        new("edition-closed", $"The edition of “{work.ShownTitle}” is closed: every number is accounted for. Nothing was changed. Only a run for proofing, or a restrike disclosed as such, can still be recorded.");

    public static RefusedException BadCount(string what) =>
        new("count-impossible", $"{what} cannot be less than nothing or more than 99,999. Nothing was changed. Count again.");
}
