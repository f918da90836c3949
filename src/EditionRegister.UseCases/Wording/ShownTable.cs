namespace EditionRegister.UseCases.Wording;

/// <summary>A column's head; amounts and counts stand on the right.</summary>
public sealed record ShownColumn(string Head, bool IsRight = false);

/// <summary>Rows under a heading, for whoever draws them.</summary>
/// <param name="Heading">What the rows are, ended by a colon.</param>
/// <param name="Columns">Heads of the cells, in their order.</param>
/// <param name="Rows">As many cells in each as there are columns; text of others stands in them as it is.</param>
public sealed record ShownTable(string Heading, IReadOnlyList<ShownColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
