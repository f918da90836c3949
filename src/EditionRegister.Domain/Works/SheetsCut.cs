namespace EditionRegister.Domain.Works;

/// <summary>How sheets become impressions: a sheet printed two-up is cut into two, two sheets of a diptych make one.</summary>
public readonly record struct SheetsCut
{
    private SheetsCut(int cutInto, int madeOf)
    {
        CutInto = cutInto;
        MadeOf = madeOf;
    }

    /// <summary>Impressions that one sheet is cut into; 1 where it is not.</summary>
    public int CutInto { get; }

    /// <summary>Sheets that make one impression; 1 where one does.</summary>
    public int MadeOf { get; }

    public bool IsOneToOne => CutInto == MadeOf;

    /// <summary>As a run says it; what is not said, or damaged to less than one, is one.</summary>
    public static SheetsCut Of(int? cutInto, int? madeOf) => new(Math.Max(1, cutInto ?? 1), Math.Max(1, madeOf ?? 1));

    public static SheetsCut Of(PrintRun run) => Of(run.CutInto, run.MadeOf);

    /// <summary>Impressions of so many printed sheets: 12 sheets cut into 2 are 24, 24 sheets made up in pairs are 12; null where they do not come out even.</summary>
    public long? Impressions(long sheets) => sheets * CutInto % MadeOf == 0 ? sheets * CutInto / MadeOf : null;

    /// <summary>The fewest printed sheets that give so many impressions.</summary>
    public long Sheets(long impressions) => ((impressions * MadeOf) + CutInto - 1) / CutInto;
}
