using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
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

    /// <summary>The number as it stands on the sheet, where it can be read.</summary>
    public string? Pencilled { get; init; }

    public PencilledNumber? Number { get; init; }

    /// <summary>at-least, at-most or about, where the size beside the number is not sure.</summary>
    public string? NumberHedge { get; init; }

    public int? NumberHedgedSize { get; init; }

    /// <summary>What stood in the number column and names no number that can be given: kept as an inscription.</summary>
    public string? NotPlain { get; init; }

    public string? EditionKind { get; init; }

    public string? Extent { get; init; }

    public int? EditionSize { get; init; }

    public bool EditionIsOpen { get; init; }

    /// <summary>The edition in words, as written; null where a figure says it.</summary>
    public string? EditionStatement { get; init; }

    /// <summary>at-least, at-most or about, where the size of the edition is not sure.</summary>
    public string? EditionHedge { get; init; }

    public int? EditionHedgedSize { get; init; }

    /// <summary>Numberings of proofs that are stated beside the edition.</summary>
    public IReadOnlyList<NumberingPlan> Beside { get; init; } = [];

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

    /// <summary>With what is said of the edition as a whole, where the row does not say it itself.</summary>
    public ReadRow Stating(StatedEdition stated) => this with
    {
        EditionSize = EditionSize ?? stated.Size,
        EditionIsOpen = EditionIsOpen || stated.IsOpen,
        EditionKind = EditionKind ?? (stated.IsUnique ? "unique" : null),
        EditionHedge = stated.Hedge,
        EditionHedgedSize = stated.HedgedSize,
        EditionStatement = stated.Words is null ? null : stated.Written,
        Beside = stated.Beside,
    };

    /// <summary>With what was read as the sheet's number; what names none is kept as an inscription. A state beside it is the run's where nothing else says one.</summary>
    public ReadRow Bearing(NumberOnSheet? number) => number is null ? this : this with
    {
        Number = number.Number,
        Pencilled = number.Number is null ? null : number.Written,
        NotPlain = number.Number is null ? number.Written : null,
        NumberHedge = number.Hedge,
        NumberHedgedSize = number.HedgedSize,
        EditionSize = EditionSize ?? number.EditionSize,
        EditionIsOpen = EditionIsOpen || number is { IsOpen: true, Number: not null },
        State = State ?? number.State,
    };
}
