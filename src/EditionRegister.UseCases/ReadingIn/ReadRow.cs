using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>One row of a file, understood. Unknown things are null or said to be unknown; lengths are micrometres, money minor units.</summary>
internal sealed record ReadRow
{
    public required int Line { get; init; }

    public RegisterCode? Code { get; init; }

    public string? Maker { get; init; }

    public string? Title { get; init; }

    /// <summary>given, untitled or unknown.</summary>
    public required string TitleState { get; init; }

    public RecordedDate Year { get; init; } = RecordedDate.None;

    public string? Technique { get; init; }

    public string? Paper { get; init; }

    public string? State { get; init; }

    public string Standing { get; init; } = "kept";

    /// <summary>The number as it stands on the sheet, where it reads as a plain number.</summary>
    public string? Pencilled { get; init; }

    public PencilledNumber? Number { get; init; }

    /// <summary>What stood in the number column but is no plain number: kept as an inscription.</summary>
    public string? NotPlain { get; init; }

    public string? EditionKind { get; init; }

    public string? Extent { get; init; }

    public int? EditionSize { get; init; }

    public bool EditionIsOpen { get; init; }

    /// <summary>All impressions there are, as stated by others; null where nobody said. No column of a file says it.</summary>
    public int? StatedTotal { get; init; }

    public RecordedDate Printed { get; init; } = RecordedDate.None;

    public string Signed { get; init; } = "unknown";

    public string? Inscription { get; init; }

    public long? ImageHeight { get; init; }

    public long? ImageWidth { get; init; }

    public long? SheetHeight { get; init; }

    public long? SheetWidth { get; init; }

    /// <summary>The size of the image in the words of the file, where it gives it in words.</summary>
    public string? ImageWritten { get; init; }

    public string? SheetWritten { get; init; }

    public string? Condition { get; init; }

    public string? Place { get; init; }

    public string? With { get; init; }

    /// <summary>yes, no, unknown, or null where the file does not say.</summary>
    public string? FreeToSell { get; init; }

    public long? Asking { get; init; }

    public string? Currency { get; init; }

    public string? Owner { get; init; }

    public long? Net { get; init; }

    public string? NetCurrency { get; init; }

    public string? Notes { get; init; }

    public IReadOnlyList<(string Header, string Value)> Kept { get; init; } = [];
}
