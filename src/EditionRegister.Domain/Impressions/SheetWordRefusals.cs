namespace EditionRegister.Domain.Impressions;

/// <summary>Why something cannot be said of a sheet in words of one's own.</summary>
public static class SheetWordRefusals
{
    public static RefusedException VariantTooLong() =>
        new("variant-too-long", "How a sheet differs is printed on its papers, and has at most 120 characters. Nothing was changed. Say it shorter; the whole story can stand in the sheet's note.");

    public static RefusedException DedicationTooLong() =>
        new("dedication-too-long", "A dedication is printed on the papers of its copy, and has at most 120 characters. Nothing was changed. Say it shorter; what stands on the sheet is transcribed with `edreg inscribe`.");
}
