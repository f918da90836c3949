namespace EditionRegister.Formats.Documents.Drawing;

/// <summary>What a PDF says of itself.</summary>
/// <param name="Language">BCP 47.</param>
/// <param name="Created">Taken from the record, never from the clock, so that the same record gives the same bytes.</param>
internal sealed record PdfIdentity(string Title, string Language, DateTime Created);
