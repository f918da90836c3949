using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>No number lies above the size of its numbering, or below one.</summary>
public sealed class NumbersWithinSize : IRule
{
    private const string Remedy =
        "Look at the sheet. Correct the record where it was mistyped, or record what is changed on the sheet; a size that was declared too small can be mended until the first sheet is signed or leaves.";

    public string Name => nameof(NumbersWithinSize);

    public string Sentence => "Every number given or pencilled lies between one and the size of its numbering.";

    public string Basis => "arithmetic: the number before the stroke counts up to the size behind it";

    public IEnumerable<Finding> Check(Work work) => work.Impressions.SelectMany(sheet => Check(work, sheet));

    private IEnumerable<Finding> Check(Work work, Impression sheet)
    {
        var numbering = work.NumberingOf(sheet);

        if (numbering is not null && sheet.Number is { } given && !Holds(numbering, given))
        {
            yield return this.Contradiction(work.SubjectOf(sheet), $"Sheet {sheet.ShownCode} is given {numbering.Spelled(given)} of {Edition(work, sheet)}, {Bounds(numbering)}.", Remedy);
        }

        PencilledNumber.TryParse(sheet.Pencilled, numbering?.Notation, work.OwnWords, out _, out var why);

        if (numbering is not null && sheet.Read(numbering.Notation, work.OwnWords) is { } says && says.Number is { } pencilled && says.Kind == numbering.Kind && !Holds(numbering, pencilled))
        {
            yield return this.Contradiction(work.SubjectOf(sheet), $"{work.Pencil(sheet, says)} is pencilled on {sheet.ShownCode} of {Edition(work, sheet)}, {Bounds(numbering)}.", Remedy);
        }

        if (why == PencilReading.OutOfRange)
        {
            yield return this.Find(
                work.EditionOf(sheet) is { IsOurs: true } ? Severity.Contradiction : Severity.Query,
                work.SubjectOf(sheet),
                $"“{sheet.Pencilled!.Trim()}” is pencilled on {sheet.ShownCode} of {Edition(work, sheet)}, and no sheet of any edition can bear that number.",
                Remedy);
        }
    }

    private static bool Holds(Numbering numbering, int number) => number >= 1 && number <= (numbering.Size ?? number);

    private static string Bounds(Numbering numbering) => numbering.Size is { } size
        ? $"whose {Kind(numbering)} end at {numbering.Spelled(Math.Max(size, 1))}"
        : "and numbers begin at one";

    private static string Kind(Numbering numbering) => numbering.Kind is { } kind && kind != NumberingKind.Numbered ? kind.PluralName : "numbers";

    private static string Edition(Work work, Impression sheet) => work.CalledEdition(work.EditionOf(sheet));
}
