using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Codes, sizes, counts, lengths and money that cannot be what they are said to be.</summary>
internal static class ReadableFigures
{
    public static IEnumerable<Unreadable> Of(Work work) =>
    [
        .. work.Numberings.SelectMany(place => OfNumbering(work.SubjectOf(place.Edition, place.Numbering), place.Numbering)),
        .. work.Runs.SelectMany(run => OfRun(work.SubjectOf(run), run)),
        .. work.Impressions.SelectMany(sheet => OfSheet(work.SubjectOf(sheet), sheet)),
    ];

    private static IEnumerable<Unreadable> OfNumbering(Subject subject, Numbering numbering)
    {
        if (numbering.Size < 1)
        {
            yield return new(subject, $"The size of {subject} is {InWords.Figure(numbering.Size.Value)}, and a size is at least one.");
        }

        if (numbering.Notation is { } notation && notation != Notation.None && numbering.Size > notation.Largest)
        {
            yield return new(subject, $"The size of {subject} is {InWords.Figure(numbering.Size.Value)}, more than can be written in {notation} numerals.");
        }

        if (numbering.Kind == NumberingKind.Numbered && numbering.Notation == Notation.None)
        {
            yield return new(subject, $"The sheets of {subject} should be numbered, and its notation is none.");
        }
    }

    private static IEnumerable<Unreadable> OfRun(Subject subject, PrintRun run) =>
    [
        .. Count(subject, "sheets started", run.Started),
        .. Count(subject, "sheets spoiled", run.Spoiled),
        .. Count(subject, "unused sheets", run.Unused),
        .. Count(subject, "sheets held out", run.HeldOut),
        .. Length(subject, "height of the image", run.ImageHeight),
        .. Length(subject, "width of the image", run.ImageWidth),
        .. Length(subject, "height of the sheet", run.SheetHeight),
        .. Length(subject, "width of the sheet", run.SheetWidth),
    ];

    private static IEnumerable<Unreadable> Count(Subject subject, string what, int? count)
    {
        if (count < 0)
        {
            yield return new(subject, $"The count of {what} of {subject} is {InWords.Figure(count.Value)}, less than none.");
        }
    }

    private static IEnumerable<Unreadable> Length(Subject subject, string what, long? micrometres)
    {
        if (micrometres <= 0)
        {
            yield return new(subject, $"The {what} of {subject} is {InWords.Figure(micrometres.Value)} micrometres, and a length is more than nothing.");
        }
    }

    private static IEnumerable<Unreadable> OfSheet(Subject subject, Impression sheet) =>
    [
        .. Code(subject, sheet),
        .. Money(subject, "asking price", sheet.Asking, sheet.AskingCurrency),
        .. sheet.Ownership.SelectMany(link => Money(subject, "price", link.Price, link.Currency).Concat(Money(subject, "net price", link.Net, link.Currency))),
        .. sheet.Whereabouts
            .Where(link => link.Rate is < 0 or > 10_000)
            .Select(link => new Unreadable(subject, $"The consignee's share of {subject} is {InWords.Figure(link.Rate!.Value)} hundredths of a per cent, and it lies between none and all.")),
    ];

    private static IEnumerable<Unreadable> Code(Subject subject, Impression sheet)
    {
        if (sheet.Code.Length == 0)
        {
            yield return new(subject, $"Code of {subject} is missing.");
        }
        else if (!RegisterCode.TryParse(sheet.Code, out var code))
        {
            yield return new(subject, $"“{sheet.Code}”, the code of {subject}, is no register code: a character is wrong or missing.");
        }
        else if (code.Text != sheet.Code)
        {
            yield return new(subject, $"“{sheet.Code}”, the code of {subject}, should be kept as {code.Text}.");
        }
    }

    private static IEnumerable<Unreadable> Money(Subject subject, string what, long? amount, string? currency)
    {
        if (amount < 0)
        {
            yield return new(subject, $"The {what} of {subject} is {InWords.Figure(amount.Value)} minor units, less than nothing.");
        }

        if (amount is not null && !(currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper)))
        {
            yield return new(subject, $"The {what} of {subject} is in “{currency}”, which is no currency.");
        }
    }
}
