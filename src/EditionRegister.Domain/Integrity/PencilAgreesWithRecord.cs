using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What is pencilled on a sheet is what the register has.</summary>
public sealed class PencilAgreesWithRecord : IRule
{
    private const string Remedy = "Look at the sheet: correct the record that was mistyped, or record what is changed on the sheet.";

    public string Name => nameof(PencilAgreesWithRecord);

    public string Sentence => "What is pencilled on a sheet agrees with the number given to it and with the title of the work.";

    public string Basis => "common practice, no source: the pencil on the sheet is the evidence, the register its record";

    public IEnumerable<Finding> Check(Work work) => work.Impressions.SelectMany(sheet => Number(work, sheet).Concat(Title(work, sheet)));

    private IEnumerable<Finding> Number(Work work, Impression sheet)
    {
        if (string.IsNullOrWhiteSpace(sheet.Pencilled))
        {
            return [];
        }

        var numbering = work.NumberingOf(sheet);
        var says = sheet.Read(numbering?.Notation, work.OwnWords);
        PencilledNumber.TryParse(sheet.Pencilled, numbering?.Notation, work.OwnWords, out _, out var why);

        return numbering is null ? NotNumbered(work, sheet, says)
            : numbering.Kind is null || numbering.Notation is null ? []
            : says is not null ? Differences(work, sheet, numbering, says)
            : why == PencilReading.NotPlain && sheet.Number is not null && !BearsItsMark(sheet, numbering.Kind) ? [Unreadable(work, sheet)]
            : [];
    }

    private IEnumerable<Finding> NotNumbered(Work work, Impression sheet, PencilledNumber? says)
    {
        if (sheet is { IsKept: true, Numbering: null } && says is not null)
        {
            yield return this.Query(
                work.SubjectOf(sheet),
                $"{work.Pencil(sheet, says)} is pencilled on {sheet.ShownCode} of {work.Called}, and the register gives the sheet no number.",
                "Give the sheet its number, or correct what is recorded of the pencil.");
        }
    }

    // 12 bis/30: a mark of the register's own may stand anywhere, and more with it.
    private static bool BearsItsMark(Impression sheet, NumberingKind kind) =>
        kind.IsOwn && sheet.Pencilled!.Split(' ', '/').Contains(kind.Mark, StringComparer.OrdinalIgnoreCase);

    private Finding Unreadable(Work work, Impression sheet) => this.Query(
        work.SubjectOf(sheet),
        $"“{sheet.Pencilled!.Trim()}” on {sheet.ShownCode} cannot be read as a number, and the register has {work.NumberShown(sheet)} of {work.CalledEdition(work.EditionOf(sheet))}.",
        $"Write the number alone as it stands on the sheet, such as {PencilledNumber.Form}; other words belong to the inscriptions.");

    private IEnumerable<Finding> Differences(Work work, Impression sheet, Numbering numbering, PencilledNumber says)
    {
        List<string> differ = [.. What(sheet, numbering, says)];

        if (differ.Count > 0)
        {
            yield return this.Contradiction(
                work.SubjectOf(sheet),
                $"{work.Pencil(sheet, says)} is pencilled on {sheet.ShownCode}, and the register has {Recorded(sheet, numbering)} of {work.CalledEdition(work.EditionOf(sheet))}: {InWords.List(differ)} differ{(differ.Count == 1 ? "s" : "")}.",
                Alterations.Recall(sheet, "number", Remedy));
        }
    }

    private static string Recorded(Impression sheet, Numbering numbering) =>
        sheet.Number is { } number ? numbering.Spelled(number) : $"a sheet of {numbering.Span}";

    /// <summary>The pencil may say less than the register (a mark alone, no size); it may not say otherwise.</summary>
    private static IEnumerable<string> What(Impression sheet, Numbering numbering, PencilledNumber says)
    {
        if (says.Kind != numbering.Kind)
        {
            yield return "kind";
        }

        if (says.Number is null)
        {
            yield break;
        }

        if (says.Notation != numbering.Notation && numbering.Notation != Notation.None)
        {
            yield return "notation";
        }

        if (sheet.Number is { } number && says.Number != number)
        {
            yield return "number";
        }

        if (says.Of is { } of && (numbering.Size ?? of) != of)
        {
            yield return "size";
        }
        else if (says.Of is not null && numbering.IsOpen)
        {
            yield return "size (open)";
        }
    }

    private IEnumerable<Finding> Title(Work work, Impression sheet)
    {
        var titled = Bare(sheet.Titled);
        var title = work.TitleState == "untitled" ? "Untitled" : Bare(work.Title);

        if (titled.Length > 0 && title.Length > 0 && !string.Equals(titled, title, StringComparison.OrdinalIgnoreCase))
        {
            yield return this.Note(
                work.SubjectOf(sheet),
                $"“{titled}” is pencilled on {work.NumberShown(sheet) ?? "sheet"} ({sheet.ShownCode}), and the work is called {work.Called}.",
                "Correct the record that was mistyped; where the sheet bears another title, this can stay as it is.");
        }
    }

    // Titles are pencilled with and without quotation marks.
    private static string Bare(string? title) =>
        string.Join(' ', (title ?? "").Trim('"', '“', '”', '„', '«', '»', '‘', '’', '\'', ' ').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
