using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Documents;

/// <summary>That a number was altered on the sheet itself, as a certificate discloses it; nothing where none was.</summary>
public static class CertificateAlterations
{
    public static IEnumerable<CertificateFact> Of(Impression impression)
    {
        ArgumentNullException.ThrowIfNull(impression);

        List<string> told = [.. impression.Changes.Where(change => change.What == "number").Select(Told)];

        return told.Count == 0 ? [] : [new CertificateFact("altered", string.Join("; ", told))];
    }

    private static string Told(SheetChange change)
    {
        var when = change.Changed.IsKnown ? $", {CertificateFacts.Date(change.Changed)}" : "";

        return (change.Was, change.Became) switch
        {
            ({ } was, { } became) => $"the number was {was}, and is {became}{when}",
            ({ } was, null) => $"the number {was} was taken off{when}",
            (null, { } became) => $"the number {became} was added{when}",
            _ => $"the number was altered{when}",
        };
    }
}
