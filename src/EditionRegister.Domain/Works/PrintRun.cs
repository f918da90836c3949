using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Works;

/// <summary>One campaign of pulling sheets. Counts are null where nobody counted; lengths are micrometres.</summary>
public sealed record PrintRun(
    long Id,
    long V,
    int Ordinal,
    string Purpose,
    string? Paper,
    string? State,
    RecordedDate Printed,
    int? Started,
    int? Spoiled,
    int? Unused,
    int? HeldOut,
    long? ImageHeight,
    long? ImageWidth,
    long? SheetHeight,
    long? SheetWidth,
    string? Note);
