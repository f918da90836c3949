namespace EditionRegister.UseCases.Looking;

/// <summary>The logbook's deeds as a person says them: what was done, to be read after the day and before the thing.</summary>
public static class DeedInWords
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["add-pictures"] = "pictures added",
        ["close-edition"] = "edition closed",
        ["consign"] = "sheets consigned",
        ["declare-edition"] = "edition declared",
        ["edit-person"] = "person corrected",
        ["edit-place"] = "place corrected",
        ["edit-print-run"] = "print run corrected",
        ["edit-work"] = "work corrected",
        ["give-numbers"] = "numbers given",
        ["inscribe"] = "inscriptions recorded",
        ["issue-certificate"] = "certificates issued",
        ["join-work"] = "people joined to the work",
        ["make-edition-whole"] = "edition made whole",
        ["make-register"] = "register made",
        ["mend-size"] = "edition size mended",
        ["price"] = "price or sale decided",
        ["put-picture-back"] = "picture put back",
        ["put-away"] = "sheets put away",
        ["read-in"] = "file read in",
        ["record-matrix"] = "block, plate or stone recorded",
        ["record-person"] = "person recorded",
        ["record-place"] = "place recorded",
        ["record-print-run"] = "print run recorded",
        ["record-work"] = "work recorded",
        ["return"] = "sheets returned",
        ["sell"] = "sheets sold",
        ["sort-pulls"] = "pulls sorted",
        ["state-matrix-fate"] = "fate of block, plate or stone stated",
        ["state-number-fate"] = "fate of numbers stated",
        ["take-picture-off"] = "picture taken off",
        ["take-link-back"] = "last step taken back",
        ["take-numbers-back"] = "numbers taken back",
        ["undo-batch"] = "batch undone",
    };

    /// <summary>A deed without words of its own is said by its name, without the hyphens.</summary>
    public static string Of(string deed) => Known.GetValueOrDefault(deed) ?? deed.Replace('-', ' ');
}
