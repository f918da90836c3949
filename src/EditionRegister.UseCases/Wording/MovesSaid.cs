using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.Wording;

/// <summary>What was done to some sheets when they went somewhere, were kept for someone or passed on, said alike by commands and rooms.</summary>
public static class MovesSaid
{
    private const string Caution = "Report a theft to the police and to the insurer; the register is no proof of title.";

    /// <summary>What a sheet that is sold on may call for.</summary>
    public const string ResaleRight = "This is a resale: in some countries a resale right may be due; ask your collecting society or a lawyer.";

    /// <param name="sheets">How many.</param>
    /// <param name="terms">The move with its terms.</param>
    /// <param name="where">Where to, as <see cref="Destination"/> says it, or null where they stay.</param>
    /// <param name="day">When.</param>
    public static string Sent(int sheets, Going terms, string? where, RecordedDate day)
    {
        string?[] parts =
        [
            $"{Counted.Sheets(sheets)} {terms.Kind.Name}{(where is null ? "" : $"{Joint(terms.Kind)}{where}")}",
            day.ToString(),
            terms.Until.IsKnown ? $"until {terms.Until}" : null,
            terms.Rate is { } share ? $"their share {Counted.Share(share)}" : null,
            terms.Agreement is { } agreement ? $"under “{agreement}”" : null,
            terms.Value is null ? null : $"insured for {PricesShown.Show(terms.Value, terms.ValueCurrency)}{Each(sheets)}",
        ];

        return string.Join(", ", parts.OfType<string>()) + ".";
    }

    /// <summary>Who and where, in the order in which a sentence has them; null where nobody knows.</summary>
    public static string? Destination(string? person, string? place) =>
        person is not null && place is not null ? $"{person}, {place}" : person ?? place;

    public static string HandedOver(int sheets, RecordedDate day) => $"{Counted.Sheets(sheets)} handed to {(sheets == 1 ? "its owner" : "their owners")}, {day}.";

    public static string Befell(Moves.MishapRecorded done, MoveKind kind, RecordedDate day) =>
        $"{Counted.Sheets(done.Sheets)} {kind.Name}, {day}; {(done.Sheets == 1 ? "its number stays" : "their numbers stay")} given."
        + (done.Withdrawn.Count == 0 ? "" : $" Withdrawn: certificate {string.Join(", ", done.Withdrawn)}.")
        + (kind == MoveKind.Stolen ? $" {Caution}" : "");

    public static string Found(int sheets, string? where, RecordedDate day) => $"{Counted.Sheets(sheets)} found again{(where is null ? "" : $", {where}")}, {day}.";

    /// <param name="sheets">How many.</param>
    /// <param name="kind">given, exchanged or bequeathed.</param>
    /// <param name="to">To whom; null is somebody not known.</param>
    /// <param name="against">What it was exchanged for, or null.</param>
    /// <param name="day">When.</param>
    public static string Passed(int sheets, MoveKind kind, string? to, string? against, RecordedDate day) =>
        $"{Counted.Sheets(sheets)} {kind.Name} {(kind == MoveKind.Exchanged ? "with" : "to")} {to ?? "somebody not known"}{(against is null ? "" : $" against {against}")}, {day}.";

    /// <param name="sheets">How many.</param>
    /// <param name="refund">Minor units for each, or null.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <param name="day">When.</param>
    public static string TakenBackFromBuyer(int sheets, long? refund, string? currency, RecordedDate day) =>
        $"{Counted.Sheets(sheets)} returned by the buyer{(PricesShown.Show(refund, currency) is { } money ? $", {money} given back{(sheets > 1 ? " for each" : "")}" : "")}, {day}; {(sheets == 1 ? "it belongs" : "they belong")} again to the one who sold {(sheets == 1 ? "it" : "them")}.";

    public static string Reserved(int sheets, string? person, RecordedDate until) =>
        $"{Counted.Sheets(sheets)} reserved for {person ?? "somebody not named"}{(until.IsKnown ? $", until {until}" : "")}.";

    public static string Lifted(int sheets) => $"{Counted.Sheets(sheets)}: reservation lifted.";

    /// <param name="code">The sheet.</param>
    /// <param name="step">The step, from one.</param>
    /// <param name="what">What was done about it.</param>
    /// <param name="chain">whereabouts or ownership.</param>
    public static string Amended(string code, int step, Moves.Amending what, string chain) => what switch
    {
        Moves.Amending.PutAfter => $"A step of {code} was put after step {Counted.Figure(step)} of its {chain}; what comes after goes on from it.",
        Moves.Amending.TakeOut => $"Step {Counted.Figure(step)} of {code} was taken out of its {chain}; the logbook keeps it.",
        _ => $"Step {Counted.Figure(step)} of {code} was put right in its {chain}; the logbook keeps what it said.",
    };

    public static string KnownSold(int numbers, string title) => $"{Counted.Of(numbers, "number")} of {title} sold before the register, {(numbers == 1 ? "buyer" : "buyers")} not known.";

    public static string KnownHere(int sheets, string title, string? where) => $"{Counted.Sheets(sheets)} of {title} recorded{(where is null ? "; nobody knows where they are" : $", {where}")}.";

    public static string Held(string title, string? number, int? total, string code) =>
        $"{title}{(number is null ? "" : $" {number}")} is recorded as somebody else's edition{(total is { } all ? $" of {Counted.Figure(all)} in all" : "")}; its code is {code}.";

    /// <summary>Reserved for Inés Vargøy until 2026-12-01; null where nothing is kept.</summary>
    public static string? ReservedOf(Domain.Impressions.Reservation? reservation, AddressBook book) => reservation is null ? null
        : $"for {(reservation.Person is { } person ? WhereInWords.PersonNamed(person, book) : "somebody not named")}{(reservation.Until.IsKnown ? $" until {reservation.Until}" : "")}";

    private static string Joint(MoveKind kind) => kind.Word switch
    {
        "lent" or "sub-consigned" => " to ",
        "on-approval" => " with ",
        _ => ", ",
    };

    private static string Each(int sheets) => sheets > 1 ? " each" : "";
}
