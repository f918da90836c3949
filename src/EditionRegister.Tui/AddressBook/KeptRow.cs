using EditionRegister.Domain.Chains;
using EditionRegister.Store.Reading;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.PlanChest;

namespace EditionRegister.Tui.AddressBook;

/// <summary>One line of what someone has, owns or made, or of what lies in a place; a sheet has a code.</summary>
/// <param name="How">has, owns, a role; or what it is.</param>
/// <param name="Number">As pencilled or given.</param>
/// <param name="Title">Of the work, or the place's name.</param>
/// <param name="Since">When it came there, or the year.</param>
/// <param name="Terms">How it came there and on what terms, or where it lies.</param>
/// <param name="Code">The sheet's register code, or null.</param>
/// <param name="Open">The page Enter opens.</param>
internal sealed record KeptRow(string How, string Number, string Title, string Since, string Terms, string? Code, Func<Page> Open)
{
    /// <summary>How it came there and on what terms, where the row itself says something else.</summary>
    public string Came { get; init; } = Terms;

    public IReadOnlyList<string> Cells => [How, Number, Title, Since, Terms];

    public static KeptRow OfSheet(Desk desk, string how, KeptSheet sheet, string? terms = null) => new(
        how, sheet.Number, sheet.Title, SinceOf(sheet), terms ?? TermsOf(sheet), sheet.Code, () => new ImpressionPage(desk, sheet.Code))
    {
        Came = TermsOf(sheet),
    };

    /// <summary>Everything of the line in a sentence, for under the list: columns cut what is long.</summary>
    public IReadOnlyList<Line> InWords(int width) => Code is null ? [] : [Line.Empty, .. Wrap.Of($"{Code}, {Title}, {Number}: since {Since}, {Came}.", width).Take(2).Select(line => Line.Of(line, Tone.Quiet))];

    /// <summary>Of a printing that took some days the last of them.</summary>
    private static string SinceOf(KeptSheet sheet) =>
        !sheet.Since.IsKnown ? "unknown"
        : sheet.Since.ToString().Split('/') is [var first, var last] ? last is "" or ".." ? first : last
        : sheet.Since.ToString();

    /// <summary>consigned until 2026-12, their share 40 %.</summary>
    private static string TermsOf(KeptSheet sheet) => string.Concat(
        MoveKind.Of(sheet.Kind)?.Name ?? sheet.Kind,
        sheet.Until.IsKnown ? $" until {sheet.Until}" : "",
        sheet.Rate is { } rate ? $", their share {Counted.Share(rate)}" : "");
}
