namespace EditionRegister.UseCases.Looking;

/// <summary>The logbook's deeds as a person says them: what was done, to be read after the day and before the thing.</summary>
public static class DeedInWords
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["add-set-part"] = "parts added to the set",
        ["alter-sheet"] = "change on the sheet recorded",
        ["close-edition"] = "edition closed",
        ["consign"] = "sheets consigned",
        ["declare-edition"] = "edition declared",
        ["edit-person"] = "person corrected",
        ["edit-place"] = "place corrected",
        ["edit-print-run"] = "print run corrected",
        ["edit-set"] = "set corrected",
        ["edit-work"] = "work corrected",
        ["gather-set"] = "sheets gathered into the set",
        ["give-numbers"] = "numbers given",
        ["grade"] = "sheets graded",
        ["inscribe"] = "inscriptions recorded",
        ["issue-certificate"] = "certificates issued",
        ["join-work"] = "people joined to the work",
        ["make-edition-whole"] = "edition made whole",
        ["make-register"] = "register made",
        ["make-set"] = "set of prints made",
        ["mend-size"] = "edition size mended",
        ["price"] = "price or sale decided",
        ["put-away"] = "sheets put away",
        ["read-in"] = "file read in",
        ["record-matrix"] = "block, plate or stone recorded",
        ["record-person"] = "person recorded",
        ["record-place"] = "place recorded",
        ["record-print-run"] = "print run recorded",
        ["record-work"] = "work recorded",
        ["remove-set-part"] = "part taken out of the set",
        ["return"] = "sheets returned",
        ["sell"] = "sheets sold",
        ["sort-pulls"] = "pulls sorted",
        ["state-matrix-fate"] = "fate of block, plate or stone stated",
        ["state-number-fate"] = "fate of numbers stated",
        ["take-alteration-back"] = "change on the sheet taken back",
        ["take-link-back"] = "last step taken back",
        ["take-numbers-back"] = "numbers taken back",
        ["take-out-of-set"] = "sheets taken out of the set",
        ["undo-batch"] = "batch undone",
        ["work-over"] = "sheet worked over by hand",
    };

    /// <summary>A deed without words of its own is said by its name, without the hyphens.</summary>
    public static string Of(string deed) => Known.GetValueOrDefault(deed) ?? deed.Replace('-', ' ');
}
