namespace EditionRegister.Domain.Passes;

/// <summary>Sheets of one pass: what went in, what came late, and what came of them. Null where nobody counted.</summary>
public sealed record PassCounts(int? In, int? Added, int? Out, int? Spoiled, int? HeldOut)
{
    public static PassCounts Of(Pass pass) => new(pass.SheetsIn, pass.Added, pass.SheetsOut, pass.Spoiled, pass.HeldOut);

    /// <summary>Sheets in and added less those out, spoiled and held out; null where one of them is unknown.</summary>
    public long? Missing => In + (long?)Added - Out - Spoiled - HeldOut;
}
