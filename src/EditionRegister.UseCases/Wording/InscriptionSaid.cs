using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>How what stands on a sheet was read, in the words of commands, screens and previews.</summary>
public static class InscriptionSaid
{
    /// <summary>artist's proof 3 of 10; drawn by A. Brandt, engraved by B. Okker. Null where nothing is read in it.</summary>
    public static string? Of(string? text, OwnWords own) => Together(
        PencilledNumber.TryParse(text, null, own, out _, out _) ? null : SheetReader.Statement(text, own) is { Kind: not StatementKind.Declined } words ? words.InWords(own) : null,
        Roles([.. SheetReader.Roles(text)]));

    /// <summary>The same while it is typed, or why something that stands there is not read.</summary>
    public static string? OfTyped(string? text, OwnWords own) =>
        Of(text, own) ?? (SheetReader.Statement(text, own) is { Kind: StatementKind.Declined } declined ? declined.InWords(own) : null);

    /// <summary>A pencilled number as it is read while it is typed: null where it is plain, and why not where it is none.</summary>
    public static string? OfNumber(string? text, OwnWords own)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        var number = NumberOnSheet.Read(text, own);

        return number.Words is null ? null
            : number.Words.Kind == StatementKind.None ? $"{StatementInWords.NotRead}: {number.WhyNot}"
            : number.Words.InWords(own);
    }

    /// <summary>An edition in words as they are read while they are typed; null where a figure says it.</summary>
    public static string? OfEdition(string? text, OwnWords own) => string.IsNullOrWhiteSpace(text) ? null : StatedEdition.Read(text, own) switch
    {
        { Words: null, WhyNot: null } => null,
        { WhyNot: { } why } => $"{StatementInWords.NotRead}: {why}",
        { Words: { } words } => words.InWords(own),
    };

    /// <summary>How the pencil of a sheet was read, where it says something that the number given to it does not.</summary>
    public static string? OfPencil(Work work, Impression sheet)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);

        return OfNumber(sheet.Pencilled, work.OwnWords) is null || sheet.PencilSays is not { } says ? null
            : says.Kind == SaidOfNumber.Declined ? $"nothing: {NumberOnSheet.Read(sheet.Pencilled!, work.OwnWords).WhyNot}"
            : SaysMore(work, sheet, says) ? says.AsStatement().InWords(work.OwnWords)
            : null;
    }

    /// <summary>How an inscription of a sheet was read, where it says something that the number given does not, and who made the print.</summary>
    public static string? OfInscription(Work work, Impression sheet, Inscription inscription)
    {
        ArgumentNullException.ThrowIfNull(inscription);

        return Together(
            inscription.Says is { Kind: not SaidOfNumber.Declined } says && SaysMore(work, sheet, says) ? says.AsStatement().InWords(work.OwnWords) : null,
            Roles([.. inscription.Roles.Select(role => (role.Role, role.Name))]));
    }

    private static bool SaysMore(Work work, Impression sheet, SaidOfNumber says) =>
        says is not { State: null, Hedge: null } || work.NumberingOf(sheet) is not { } numbering || sheet.Number is null
        || says.AsNumber(work.OwnWords) is not { } number
        || number.Kind != numbering.Kind || (number.Number ?? sheet.Number) != sheet.Number || (number.Of ?? numbering.Size) != numbering.Size;

    private static string? Roles(IReadOnlyList<(string Role, string? Name)> roles) =>
        roles.Count == 0 ? null : string.Join(", ", roles.Select(one => one.Name is { } name ? $"{Done(one.Role)} by {name}" : Done(one.Role)));

    private static string Done(string role) => role == "drew" ? "drawn" : role;

    private static string? Together(string? number, string? roles) => string.IsNullOrEmpty(number) ? roles : roles is null ? number : $"{number}; {roles}";
}
