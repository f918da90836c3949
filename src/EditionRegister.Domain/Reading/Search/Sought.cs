using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Search;

/// <summary>What somebody typed to find sheets: a whole code, or parts that must all be met.</summary>
/// <param name="Code">The eight characters, when exactly one code was typed; then there are no parts.</param>
/// <param name="Parts">In the order typed; none is everything.</param>
public sealed record Sought(string? Code, IReadOnlyList<SoughtPart> Parts)
{
    /// <summary>Nothing was typed: everything is meant.</summary>
    public static Sought Everything { get; } = new(null, []);

    /// <summary>The number that was asked for first, or null.</summary>
    public SoughtNumber? Number => Parts.FirstOrDefault(part => part.Number is not null)?.Number;

    /// <summary>The parts that were read otherwise than as words.</summary>
    public IEnumerable<SoughtPart> Understood => Parts.Where(part => part.IsRead);

    /// <summary>Words each by itself, and nothing read in them.</summary>
    public static Sought Words(string? text) => new(null, [.. ParsedWords.Cut(text).Select(word => new SoughtPart(word, [word]))]);

    /// <summary>Reads a line of a filter: what is no number, date or technique is a word each by itself.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="own">Kinds that the register made for itself; their marks are understood too.</param>
    public static Sought Read(string? text, OwnWords? own = null)
    {
        ParsedWords words = new(own ?? OwnWords.None);
        words.AddEach(text);

        return new Sought(null, words.Parts());
    }

    /// <summary>Reads what was typed apart, as arguments of a command: a text in which nothing is read stays as it stands, blanks and all.</summary>
    /// <param name="texts">As typed.</param>
    /// <param name="own">Kinds that the register made for itself.</param>
    public static Sought Read(IReadOnlyList<string> texts, OwnWords? own = null)
    {
        ArgumentNullException.ThrowIfNull(texts);

        if (texts is [var one] && RegisterCode.TryParse(one, out var code))
        {
            return new Sought(code.Text, []);
        }

        ParsedWords words = new(own ?? OwnWords.None);

        foreach (var text in texts)
        {
            words.AddTogether(text);
        }

        return new Sought(null, words.Parts());
    }

    /// <summary>The same where there are no numbers to be found: what was read as one alone is words.</summary>
    public Sought WithoutNumbers() => this with { Parts = [.. Parts.Select(part => part with { Number = null })] };
}
