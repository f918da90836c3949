namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>The words that the kinds of proof are reported by.</summary>
internal static class Series
{
    public const string Edition = "edition";
    public const string Artists = "A/P";
    public const string Printers = "P/P";
    public const string HorsCommerce = "H.C.";
    public const string BonATirer = "B.A.T.";
    public const string Trial = "T/P";
    public const string ColourTrial = "C.T.P.";
    public const string Working = "W/P";
    public const string Publishers = "publisher's proof";
    public const string Workshop = "workshop proof";
    public const string State = "state proof";
    public const string Progressive = "progressive proof";
    public const string Cancellation = "cancellation proof";
    public const string Presentation = "presentation proof";
    public const string Archive = "archive proof";
    public const string Exchange = "exchange proof";
    public const string LegalDeposit = "legal deposit";

    /// <summary>The text says that it is a proof, and not of what kind.</summary>
    public const string Proof = "proof";

    /// <summary>S/P: a state proof to one workshop, a special proof to another.</summary>
    public const string Ambiguous = "S/P";
}
