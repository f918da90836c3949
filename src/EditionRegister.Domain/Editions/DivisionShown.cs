using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Editions;

/// <summary>One share of a divided edition: who is to have which numbers, and whose they are now. For the keeper of the register.</summary>
/// <param name="Person">Who is to have them.</param>
/// <param name="Numbers">1/25 to 20/25.</param>
/// <param name="Now">18 theirs; 2 belong to Inés Vargøy.</param>
/// <param name="Agreed">The entitlement.</param>
public sealed record ShareOfEdition(string Person, string Numbers, string Now, Entitlement Agreed);

/// <summary>The division of an edition in words.</summary>
public static class DivisionShown
{
    public static IReadOnlyList<ShareOfEdition> Of(Work work, Edition edition)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(edition);

        return
        [
            .. from one in edition.Entitlements
               let numbering = edition.Find(one.Numbering)
               where numbering is not null
               select new ShareOfEdition(work.Book.NameOf(one.Person), InWords.Numbers(numbering, Numbers(one)), Now(work, numbering, one), one),
        ];
    }

    // Damage may have made the stretch huge or turned it round.
    private static IEnumerable<int> Numbers(Entitlement one) => Enumerable.Range(one.First, Math.Clamp(one.Last - one.First + 1, 0, 9_999));

    private static string Now(Work work, Numbering numbering, Entitlement one)
    {
        var numbers = Numbers(one).ToHashSet();
        var sheets = work.Impressions.Where(sheet => sheet.Numbering == numbering.Id && sheet.Number is { } number && numbers.Contains(number)).ToList();
        var without = numbers.Count - sheets.Select(sheet => sheet.Number).Distinct().Count();
        List<string> parts =
        [
            .. sheets.GroupBy(sheet => sheet.Whose is { State: "known" } whose ? whose.Person : null)
                .OrderByDescending(same => same.Key == one.Person)
                .Select(same => $"{InWords.Figure(same.Count())} {Whose(work, one, same.Key, same.Count())}"),
        ];

        return string.Join("; ", without == 0 ? parts : [.. parts, $"{InWords.Figure(without)} without a sheet"]);
    }

    private static string Whose(Work work, Entitlement one, long? owner, int count) =>
        owner is null ? "of an owner not known"
        : owner == one.Person ? "theirs now"
        : $"{(count == 1 ? "belongs" : "belong")} to {work.Book.NameOf(owner)}";
}
