namespace EditionRegister.Formats.Csv;

/// <summary>A CSV file as read: every row has as many fields as there are headers, and knows its line in the file.</summary>
/// <param name="Delimiter">Comma or semicolon, whichever the header line uses.</param>
public sealed record CsvTable(char Delimiter, IReadOnlyList<string> Headers, IReadOnlyList<CsvRow> Rows);

/// <summary>One record of a CSV file, its fields exactly as they stood, spaces included.</summary>
/// <param name="Line">The physical line, counted from 1, on which the record starts; line breaks inside quotes count.</param>
public sealed record CsvRow(int Line, IReadOnlyList<string> Fields);
