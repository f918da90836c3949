using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Lettering;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Reads what stands on a sheet: the one door to the readers of statements and of lettering.</summary>
public static class SheetReader
{
    private const string Edition = "edition";
    private const string CancellationProof = "cancellation proof";

    /// <summary>What a text says of number, edition and state.</summary>
    public static EditionStatement Statement(string? text, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(own);

        return EditionStatementReader.Read(text, own);
    }

    /// <summary>The kind of numbering of a series that was read, the register's own first; null where the register has none.</summary>
    public static NumberingKind? KindOf(string? series, OwnWords own)
    {
        ArgumentNullException.ThrowIfNull(own);

        return SeriesKinds.KindOf(series, own);
    }

    /// <summary>The word that the reader has for a kind.</summary>
    public static string SeriesOf(NumberingKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);

        return kind == NumberingKind.Numbered ? Edition : kind == NumberingKind.Cancellation ? CancellationProof : kind.Mark;
    }

    /// <summary>What a pencilled number says: a plain one as the register reads numbers, so that kinds of its own are right; any other in words.</summary>
    /// <param name="text">As it stands on the sheet.</param>
    /// <param name="expected">The notation of the numbering the sheet belongs to; settles whether C is a letter or a hundred.</param>
    /// <param name="own">The register's own kinds.</param>
    public static SaidOfNumber? Pencil(string? text, Notation? expected, OwnWords own) =>
        PencilledNumber.TryParse(text, expected, own, out var plain, out _) ? SaidOfNumber.Of(plain) : SaidOfNumber.Of(Statement(text, own));

    /// <summary>What an inscription says of number, edition and state; null where it says nothing of them.</summary>
    public static SaidOfNumber? Inscription(string? text, OwnWords own) => SaidOfNumber.Of(Statement(text, own));

    /// <summary>Who drew, engraved or printed, as the lettering says, in the order in which it says so.</summary>
    public static IReadOnlyList<(string Role, string? Name)> Roles(string? text) =>
        [.. LetteringReader.Read(text).Select(one => (one.Role.Word, one.Name.Length == 0 ? null : one.Name))];
}
