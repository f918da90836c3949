namespace EditionRegister.UseCases.Looking;

/// <summary>The logbook's deeds as a person says them: what was done, to be read after the day and before the thing.</summary>
public static class DeedInWords
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["amend-move"] = "step of whereabouts put right",
        ["amend-transfer"] = "step of ownership put right",
        ["await-collection"] = "sheets awaiting collection",
        ["bequeath"] = "sheets bequeathed",
        ["close-edition"] = "edition closed",
        ["consign"] = "sheets consigned",
        ["declare-edition"] = "edition declared",
        ["edit-person"] = "person corrected",
        ["edit-place"] = "place corrected",
        ["edit-print-run"] = "print run corrected",
        ["edit-work"] = "work corrected",
        ["exchange"] = "sheets exchanged",
        ["exhibit"] = "sheets exhibited",
        ["find"] = "sheets found again",
        ["give"] = "sheets given",
        ["give-numbers"] = "numbers given",
        ["hand-over"] = "sheets handed to their owners",
        ["hold"] = "sheet of another's edition recorded",
        ["inscribe"] = "inscriptions recorded",
        ["issue-certificate"] = "certificates issued",
        ["join-work"] = "people joined to the work",
        ["known-here"] = "sheets of an old edition recorded",
        ["known-sold"] = "numbers sold long ago recorded",
        ["lend"] = "sheets lent",
        ["lift-reservation"] = "reservation lifted",
        ["make-edition-whole"] = "edition made whole",
        ["make-register"] = "register made",
        ["mend-size"] = "edition size mended",
        ["pass-on"] = "sheets passed on by the consignee",
        ["price"] = "price or sale decided",
        ["put-away"] = "sheets put away",
        ["read-in"] = "file read in",
        ["record-matrix"] = "block, plate or stone recorded",
        ["record-mishap"] = "sheets lost, stolen or destroyed",
        ["record-person"] = "person recorded",
        ["record-place"] = "place recorded",
        ["record-print-run"] = "print run recorded",
        ["record-work"] = "work recorded",
        ["reserve"] = "sheets reserved",
        ["return"] = "sheets returned",
        ["sell"] = "sheets sold",
        ["send-away"] = "sheets sent away",
        ["sort-pulls"] = "pulls sorted",
        ["state-matrix-fate"] = "fate of block, plate or stone stated",
        ["state-number-fate"] = "fate of numbers stated",
        ["take-back-from-buyer"] = "sheets taken back from the buyer",
        ["take-link-back"] = "last step taken back",
        ["take-numbers-back"] = "numbers taken back",
        ["undo-batch"] = "batch undone",
    };

    /// <summary>A deed without words of its own is said by its name, without the hyphens.</summary>
    public static string Of(string deed) => Known.GetValueOrDefault(deed) ?? deed.Replace('-', ' ');
}
