using EditionRegister.Domain.People;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Who someone is and what the public sees of them, as the lines above what they have.</summary>
internal static class PersonFacts
{
    private const int MostOfANote = 2;
    private const int LabelColumns = 12;

    public static string What(Person person) => !person.IsProtected ? person.What : person.IsOrganisation ? "protected" : "pupil";

    public static IReadOnlyList<Line> Of(Person person, int width) =>
    [
        Line.Of(person.FullName, Tone.Strong).Then($"  {person.What} {Counted.Figure(person.Id)}{(person.IsProtected ? ", protected" : "")}", Tone.Quiet),
        .. Fact("In public", $"“{person.PublicText}” ({Shown(person)})", width),
        // The way a buyer is named says nothing of how a maker is.
        .. person.CreditText != person.PublicText ? Fact("As maker", $"“{person.CreditText}” (who made or printed a work is named whole, unless protected)", width) : [],
        .. Fact("Class code", person.ClassCode, width),
        .. Fact("Contact", person.Contact, width),
        .. Fact("Note", person.Note, width),
    ];

    private static string Shown(Person person) =>
        person.IsOrganisation ? "an organisation always shows its name"
        : person.PublicText is PublicName.UnnamedPupil or PublicName.PrivateCollection && person.Policy is not ("unnamed" or "wording")
            ? $"{person.Policy} would show {AddressBookSaid.Shows(person.Policy)}, and there is not enough of it, so nothing is shown"
        : $"{person.Policy}: {AddressBookSaid.Shows(person.Policy)}";

    private static IEnumerable<Line> Fact(string label, string? value, int width)
    {
        if (value is null)
        {
            yield break;
        }

        var lines = Wrap.Of(value.ReplaceLineEndings(" "), Math.Max(1, width - LabelColumns));

        for (var at = 0; at < Math.Min(lines.Count, MostOfANote); at++)
        {
            yield return Line.Fact(at == 0 ? label : "", at == MostOfANote - 1 && lines.Count > MostOfANote ? lines[at] + " …" : lines[at], LabelColumns);
        }
    }
}
