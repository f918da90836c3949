namespace EditionRegister.UseCases.ReadingIn;

/// <summary>What reading a file in would do, or did.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Columns">What each header was taken for.</param>
/// <param name="Rows">Rows under the header: one impression each.</param>
/// <param name="Works">Works the rows are of.</param>
/// <param name="NewWorks">Those of them the register does not know yet.</param>
/// <param name="NewEditions">Editions the register does not know yet.</param>
/// <param name="Remarks">Values kept as written, by line.</param>
/// <param name="Readings">Texts that were read in words, each with how; one for every cell.</param>
/// <param name="Problems">Values that keep the file from being read in, by line.</param>
/// <param name="Batch">The batch it became, or was read in as before; null while it is only looked at.</param>
/// <param name="WasReadBefore">The same bytes were read in before, so nothing is added.</param>
public sealed record ReadInReport(
    string File,
    IReadOnlyList<ColumnMatch> Columns,
    int Rows,
    int Works,
    int NewWorks,
    int NewEditions,
    IReadOnlyList<RowProblem> Remarks,
    IReadOnlyList<TextRead> Readings,
    IReadOnlyList<RowProblem> Problems,
    long? Batch,
    bool WasReadBefore);
