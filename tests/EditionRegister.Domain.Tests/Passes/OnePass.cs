using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Passes;

/// <summary>Runs with passes for tests: counts are in, added, out, spoiled, held out.</summary>
internal static class OnePass
{
    public static Pass Of(int ordinal, int? sheetsIn, int? added, int? sheetsOut, int? spoiled, int? heldOut) => new()
    {
        Id = 300 + ordinal,
        V = 1,
        Run = 7,
        Ordinal = ordinal,
        Kind = "printed",
        Side = "recto",
        Reach = "all",
        Done = RecordedDate.None,
        SheetsIn = sheetsIn,
        Added = added,
        SheetsOut = sheetsOut,
        Spoiled = spoiled,
        HeldOut = heldOut,
        Matrices = [],
        Colours = [],
        People = [],
        SpoiledBy = [],
        HeldOutAs = [],
        Sheets = [],
    };

    public static Pass OverSome(this Pass pass) => pass with { Reach = "some" };

    public static Pass From(this Pass pass, long matrix, long? state = null) => pass with { Matrices = [new(1, matrix, state)] };

    public static Pass On(this Pass pass, string day) => pass with { Done = RecordedDate.Read(day) };

    public static PrintRun Run(int? started, int? unused, params Pass[] passes) =>
        new(7, 1, 1, "edition", null, null, RecordedDate.None, started, null, unused, null, null, null, null, null, null) { Passes = passes };
}
