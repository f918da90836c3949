using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

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

    public static RefusedException Unbalanced(int started, int spoiled, int unused, int pulled, SheetsCut cut) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {started} started, less {spoiled} spoiled and {unused} unused leaves {started - spoiled - unused}{InPile(started - spoiled - unused, cut)}, but {pulled} are in the pile. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException Indivisible(int started, int spoiled, int unused, SheetsCut cut) =>
        new("sheets-do-not-divide", string.Create(CultureInfo.InvariantCulture, $"The sheets do not come out even: {started} started, less {spoiled} spoiled and {unused} unused leaves {started - spoiled - unused}, and {cut.MadeOf} sheets make {(cut.CutInto == 1 ? "one impression" : $"{cut.CutInto} impressions")}. Nothing was changed. Count again; a sheet without its fellow is a spoiled one."));

    public static RefusedException TooFewStarted(int started, int spoiled, int unused) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {spoiled} spoiled and {unused} unused are more than the {started} started. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException TooManyHeldOut(int heldOut, int pulled) =>
        new("sheets-do-not-balance", string.Create(CultureInfo.InvariantCulture, $"The sheets do not balance: {heldOut} held out as proofs are more than the {pulled} pulled. Nothing was changed. Count again, and correct the number that is wrong."));

    public static RefusedException StartedNotCounted() =>
        new("started-not-counted", "A run that is under way begins with the sheets that were started, and they are not given. Nothing was changed. Give --started; or record the run when the pile is counted, with --pile.");

    public static RefusedException PileOfRunUnderWay() =>
        new("pile-of-run-under-way", "A run that is under way has no pile yet: its sheets are still going through the press, and its passes count what is spoiled and held out. Nothing was changed. Leave --pile, --spoiled and --held-out out, and lay the pile after the last pass with `edreg run pile`; or leave --under-way out.");

    public static RefusedException PileLaid(Work work, PrintRun run) =>
        new("pile-laid-already", string.Create(CultureInfo.InvariantCulture, $"The pile of print run {run.Ordinal} of “{work.ShownTitle}” is laid already: its sheets have their codes. Nothing was changed. What was counted is put right with `edreg run edit {work.Id} --run {run.Ordinal}`."));

    public static RefusedException CancellationProofIsProofing() =>
        new("cancellation-proof-is-proofing", "A cancellation proof is pulled to show that the matrix is cancelled, so its run is one of proofing. Nothing was changed. Say --purpose proofing; a run of sheets to keep from a cancelled matrix is a restrike.");

    public static RefusedException PileNotCounted() =>
        new("pile-not-counted", "How many sheets are in the pile cannot be told: sheets started are not given, nor the pile itself. Nothing was changed. Give --started (with --spoiled and --unused), or count the pile and give --pile.");

    public static RefusedException ReductionPrintedAlready(Work work, PrintRun first)
    {
        var block = work.Matrices.First(matrix => matrix.IsReduction);
        var others = work.Matrices.Count > 1;

        return new RefusedException("reduction-printed-already", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” is {(others ? "in part " : "")}a reduction print and was printed in run {first.Ordinal} ({first.Printed}): {(others ? block.CalledPart : $"the {block.Called}")} was cut away in printing, so it cannot be printed again{(others ? ", and the others alone give another image" : "")}. Nothing was changed. A new image cut from what is left of the {block.Called} is a work of its own."));
    }

    public static RefusedException PrintedAfterFate(Work work, Matrix matrix) =>
        new("matrix-cannot-print", $"The {matrix.Called} of “{work.ShownTitle}” was {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}), before the date of this run. Nothing was changed. Correct the date, or the fate of the {matrix.Called}.{(matrix.Fate == "cancelled" ? " A proof of the cancellation is recorded with --cancellation-proof and --purpose proofing, a disclosed reprint with --purpose restrike." : "")}");

    public static RefusedException StateRecorded(Matrix matrix, MatrixState state) =>
        new("state-recorded-already", $"State {state.Name} of {matrix.CalledPart} is on record already ({state.Reached}). Nothing was changed. Name the new state otherwise, or look at the states with `edreg matrix list`.");

    public static RefusedException StateBefore(Matrix matrix, string name, RecordedDate reached, MatrixState later) =>
        new("states-run-back", $"State {name} of {matrix.CalledPart} would be reached {reached}, before state {later.Name} ({later.Reached}), which is on record as the earlier one. Nothing was changed. States are recorded in the order in which they were cut; correct the date.");

    public static RefusedException StateAfterFate(Matrix matrix, string name, RecordedDate reached) =>
        new("states-run-back", $"State {name} would be reached {reached}, after {matrix.CalledPart} was {matrix.Fate.Replace('-', ' ')} ({matrix.FateDate}). Nothing was changed. Correct the date, or the fate with `edreg matrix fate` and --correct.");

    public static RefusedException NoSuchState(Matrix matrix, string name) =>
        new("state-not-found", $"{char.ToUpperInvariant(matrix.CalledPart[0])}{matrix.CalledPart[1..]} has no state {name} on record{(matrix.States.Count == 0 ? "" : $"; it has {string.Join(", ", matrix.States.Select(state => state.Name))}")}. Nothing was changed. Record the state first with `edreg matrix state`.");

    public static RefusedException NoSuchPart(Work work, string named) =>
        new("matrix-not-found", string.Create(CultureInfo.InvariantCulture, $"“{work.ShownTitle}” has no matrix {named}, neither of that number nor of that part. Nothing was changed. `edreg work show {work.Id}` shows its matrices with their numbers and parts."));

    public static RefusedException CutAwayNeedsReduction(Matrix matrix) =>
        new("fate-needs-reduction", $"{char.ToUpperInvariant(matrix.CalledPart[0])}{matrix.CalledPart[1..]} is recorded as cut away in printing, which only a reduction is. Nothing was changed. Correct its fate first with `edreg matrix fate` and --correct.");

    public static RefusedException CodeGiven(Matrix matrix) =>
        new("matrix-has-code", $"{char.ToUpperInvariant(matrix.CalledPart[0])}{matrix.CalledPart[1..]} has the code {matrix.ShownCode} already, and a code is for ever. Nothing was changed. Leave --give-code out.");

    public static RefusedException ProofOfAnotherWork(Work work, Matrix matrix, Impression proof) =>
        new("proof-of-another-work", $"{proof.ShownCode} is no impression of “{work.ShownTitle}”, so it cannot prove what became of its {matrix.Called}. Nothing was changed. Name an impression of this work; one pulled from the cancelled {matrix.Called} is recorded with `edreg run add` and --cancellation-proof.");

    public static RefusedException EditionClosed(Work work) =>
        new("edition-closed", $"The edition of “{work.ShownTitle}” is closed: every number is accounted for. Nothing was changed. Only a run for proofing, or a restrike disclosed as such, can still be recorded; for a later edition declare that one first.");

    public static RefusedException BadCount(string what) =>
        new("count-impossible", $"{what} cannot be less than nothing or more than 99,999. Nothing was changed. Count again.");

    private static string InPile(int sheets, SheetsCut cut) => cut.IsOneToOne ? ""
        : string.Create(CultureInfo.InvariantCulture, $" sheets, which, {(cut.MadeOf == 1 ? $"cut into {cut.CutInto} each" : cut.CutInto == 1 ? $"{cut.MadeOf} to an impression" : $"{cut.MadeOf} to {cut.CutInto} impressions")}, give {cut.Impressions(sheets)}");
}
