using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.Domain.Stock;

namespace EditionRegister.Domain.Impressions;

/// <summary>One printed sheet with everything the register says of it. Words are as found; what cannot be read is null when parsed.</summary>
public sealed record Impression
{
    public required long Id { get; init; }

    public required long V { get; init; }

    public required long Run { get; init; }

    /// <summary>Its place in the pile, from one.</summary>
    public required int Ordinal { get; init; }

    /// <summary>The eight characters as stored.</summary>
    public required string Code { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public required string Standing { get; init; }

    public string? Fault { get; init; }

    public string? FaultNote { get; init; }

    public long? Numbering { get; init; }

    public int? Number { get; init; }

    /// <summary>The number as it stands on the sheet, as written.</summary>
    public string? Pencilled { get; init; }

    /// <summary>What was read in <see cref="Pencilled"/>; null where nothing was.</summary>
    public SaidOfNumber? PencilSays { get; init; }

    /// <summary>The title as it stands on the sheet, as written.</summary>
    public string? Titled { get; init; }

    /// <summary>yes, no or unknown: signed by hand on the sheet.</summary>
    public required string Signed { get; init; }

    /// <summary>The signature as it stands on the sheet, as written.</summary>
    public string? Signature { get; init; }

    public string? Condition { get; init; }

    /// <summary>by-custom, yes, no or unknown.</summary>
    public required string ForSale { get; init; }

    public long? Asking { get; init; }

    public string? AskingCurrency { get; init; }

    public string? Note { get; init; }

    public required IReadOnlyList<Inscription> Inscriptions { get; init; }

    public required IReadOnlyList<WhereaboutsLink> Whereabouts { get; init; }

    public required IReadOnlyList<OwnershipLink> Ownership { get; init; }

    public required IReadOnlyList<IssuedDocument> Documents { get; init; }

    public required IReadOnlyList<KeptColumn> KeptColumns { get; init; }

    /// <summary>The pass after which it was held out, or null where nobody said.</summary>
    public long? AfterPass { get; init; }

    /// <summary>How it differs from the others of a varied edition, as written.</summary>
    public string? Variant { get; init; }

    /// <summary>To whom the copy is dedicated, as written.</summary>
    public string? Dedication { get; init; }

    public Grade? Grade { get; init; }

    /// <summary>What it is to other sheets: a ghost, or a replacement.</summary>
    public IReadOnlyList<SheetLink> Links { get; init; } = [];

    /// <summary>What was altered on the paper itself.</summary>
    public IReadOnlyList<SheetChange> Changes { get; init; } = [];

    public IReadOnlyList<Reservation> Reservations { get; init; } = [];

    public IReadOnlyList<ConditionReport> ConditionReports { get; init; } = [];

    /// <summary>Where it came up in the newest stock-take of a place, oldest first.</summary>
    public IReadOnlyList<SheetInStock> Stock { get; init; } = [];

    /// <summary>Of a copy of a set: the sheets that lie in it, and those taken out.</summary>
    public IReadOnlyList<SetSheet> SetSheets { get; init; } = [];

    /// <summary>Of a sheet that lies in a set: which.</summary>
    public SetMembership? InSet { get; init; }

    /// <summary>Of a sheet left out that was worked over by hand: the work of its own that came of it.</summary>
    public WorkedInto? WorkedInto { get; init; }

    public Reservation? StandingReservation => Reservations.FirstOrDefault(one => one.IsStanding);

    /// <summary>The code as people see it, <c>7KQ4-M2X3</c>; as found where damage made it no code.</summary>
    public string ShownCode => RegisterCode.TryParse(Code, out var code) ? code.ToString() : Code;

    public bool IsSigned => Signed == "yes";

    public bool IsKept => Standing == "kept";

    /// <summary>Known from a list, not from the press: what the list does not say of it is not known.</summary>
    public bool IsAsListed => Whereabouts is [{ Kind: "as-listed" }, ..];

    public Position? Where => Whereabouts.Count == 0 ? null : Whereabouts[^1].To;

    public Owner? Whose => Ownership.Count == 0 ? null : Ownership[^1].To;

    public IssuedDocument? ValidCertificate => Documents.FirstOrDefault(document => document.IsValidCertificate);

    /// <summary>What the pencil says, read with the notation its numbering leads one to expect, in words too; null where it is blank or names no number.</summary>
    public PencilledNumber? Read(Notation? expected) => Read(expected, OwnWords.None);

    /// <summary>The same, where the register has kinds of its own.</summary>
    public PencilledNumber? Read(Notation? expected, OwnWords own) =>
        PencilledNumber.TryParse(Pencilled, expected, own, out var read, out var why) ? read
        : why == PencilReading.NotPlain && (PencilSays ?? SheetReader.Pencil(Pencilled, expected, own))?.AsNumber(own) is { } words ? words.AsExpected(expected)
        : null;
}
