using System.Globalization;
using System.Text;

namespace EditionRegister.Domain.People;

/// <summary>A name taken apart as far as its sort name allows; what cannot be told apart is null.</summary>
internal sealed class NameParts
{
    private readonly string _letters;

    public NameParts(string name, string? sortName)
    {
        _letters = Letters(name);

        var sides = (sortName ?? "").Split(',', '，', '、');
        var family = Words(sides[0]);
        var given = sides.Length > 1 ? WithoutParticlesBehind(Words(sides[1])) : [];

        // A family name met again among the given ones shows that the sort name was filled in carelessly.
        if (family.Length > 0 && given.Length > 0 && !given.Intersect(family, StringComparer.OrdinalIgnoreCase).Any())
        {
            Given = string.Join(' ', given);
            var initial = Initial(WithoutParticlesBefore(family)[0]);
            GivenAndInitial = initial is null ? null : $"{Given} {initial}";
            Initials = Joined([.. given, WithoutParticlesBefore(family)[0]]);
        }
        else
        {
            Initials = Joined(WithoutParticlesBetween(Words(name)));
        }
    }

    public string? Given { get; }

    public string? GivenAndInitial { get; }

    public string? Initials { get; }

    /// <summary>Something to show in which the whole name is not found again, as a family name of one letter would make it.</summary>
    public bool IsLessThanTheName(string? text) =>
        !string.IsNullOrEmpty(text) && (_letters.Length == 0 || !Letters(text).Contains(_letters, StringComparison.OrdinalIgnoreCase));

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    // "van", "de", "von der": they are written small. A name written small throughout keeps its first or last word.
    private static bool IsParticle(string word) => char.IsLower(word[0]);

    private static string[] WithoutParticlesBehind(string[] given) =>
        [.. given.Where((word, place) => place == 0 || !given.Skip(place).All(IsParticle))];

    private static string[] WithoutParticlesBefore(string[] family) =>
        family.SkipWhile(IsParticle).ToArray() is { Length: > 0 } rest ? rest : family[^1..];

    private static string[] WithoutParticlesBetween(string[] name) =>
        name.Where(word => !IsParticle(word)).ToArray() is { Length: > 0 } rest ? rest : name;

    private static string? Joined(string[] words)
    {
        var initials = words.Select(Initial).ToList();

        return initials.Count == 0 || initials.Contains(null) ? null : string.Join(' ', initials);
    }

    // Only scripts with capital and small letters have initials: the first character of 王芳 or 김민수 is the whole family name.
    private static string? Initial(string word)
    {
        var first = StringInfo.GetNextTextElement(word);
        var category = Rune.TryGetRuneAt(first, 0, out var rune) ? Rune.GetUnicodeCategory(rune) : UnicodeCategory.OtherNotAssigned;

        return category is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter ? first + "." : null;
    }

    private static string Letters(string text) =>
        string.Concat(text.Where(c => char.IsLetter(c) || char.IsSurrogate(c) || char.IsDigit(c)));
}
