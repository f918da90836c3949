namespace EditionRegister.UseCases.Looking;

/// <summary>The logbook's deeds as a person says them: what was done, to be read after the day and before the thing.</summary>
public static class DeedInWords
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["add-fault"] = "fault added to the list",
        ["add-kind"] = "kind of numbering made",
        ["close-edition"] = "edition closed",
        ["consign"] = "sheets consigned",
        ["declare-edition"] = "edition declared",
        ["edit-matrix"] = "block, plate or stone corrected",
        ["edit-pass"] = "pass corrected",
        ["dedicate-sheets"] = "copies dedicated",
        ["divide-edition"] = "edition divided",
        ["edit-kind"] = "kind of numbering changed",
        ["edit-person"] = "person corrected",
        ["edit-place"] = "place corrected",
        ["edit-print-run"] = "print run corrected",
        ["edit-work"] = "work corrected",
        ["end-short"] = "short edition ended",
        ["give-numbers"] = "numbers given",
        ["inscribe"] = "inscriptions recorded",
        ["issue-certificate"] = "certificates issued",
        ["join-work"] = "people joined to the work",
        ["lay-pile"] = "pile of a print run laid",
        ["link-ghost"] = "ghost recorded",
        ["make-edition-whole"] = "edition made whole",
        ["make-register"] = "register made",
        ["mend-size"] = "edition size mended",
        ["price"] = "price or sale decided",
        ["put-away"] = "sheets put away",
        ["reach-matrix-state"] = "state of block, plate or stone recorded",
        ["read-in"] = "file read in",
        ["record-matrix"] = "block, plate or stone recorded",
        ["record-pass"] = "pass recorded",
        ["record-person"] = "person recorded",
        ["record-place"] = "place recorded",
        ["record-print-run"] = "print run recorded",
        ["record-work"] = "work recorded",
        ["repeat-pass"] = "pass recorded, as the one before",
        ["replace-sheet"] = "sheet replaced",
        ["return"] = "sheets returned",
        ["sell"] = "sheets sold",
        ["sort-pulls"] = "pulls sorted",
        ["state-matrix-fate"] = "fate of block, plate or stone stated",
        ["state-number-fate"] = "fate of numbers stated",
        ["take-division-back"] = "division taken back",
        ["take-ghost-back"] = "ghost taken back",
        ["take-link-back"] = "last step taken back",
        ["take-numbers-back"] = "numbers taken back",
        ["take-pass-back"] = "pass taken back",
        ["undo-batch"] = "batch undone",
        ["vary-sheets"] = "variants recorded",
    };

    /// <summary>A deed without words of its own is said by its name, without the hyphens.</summary>
    public static string Of(string deed) => Known.GetValueOrDefault(deed) ?? deed.Replace('-', ' ');
}
