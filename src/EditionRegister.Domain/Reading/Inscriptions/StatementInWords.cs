using System.Globalization;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What was read, in short plain words for the person who typed it.</summary>
public static class StatementInWords
{
    /// <summary>What the words begin with where something stands there that is not read.</summary>
    public const string NotRead = "not read";

    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];
    private static readonly string[] Cardinals = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    extension(EditionStatement said)
    {
        /// <summary>artist's proof 2 of 5; an edition of 75, and beside it 10 artist's proofs; empty where the text says nothing of a number, an edition or a state.</summary>
        /// <param name="own">The kinds that a register made for itself, which have names of their own.</param>
        public string InWords(OwnWords? own = null)
        {
            if (said.Kind == StatementKind.Declined)
            {
                return said.WhyNot is { } why ? $"{NotRead}: {AsClause(why)}" : NotRead;
            }

            var words = own ?? OwnWords.None;
            var number = said.Kind switch
            {
                StatementKind.Numbered => Copy(said),
                StatementKind.Proof => Proof(said, words),
                StatementKind.Size => $"an edition{(Size(said) is { } size ? $" of {size}" : "")}",
                StatementKind.Open => Open(said),
                _ => null,
            };
            var beside = said.Beside.Count == 0 ? null : $"and beside it {List([.. said.Beside.Select(proofs => Counted(proofs, words))])}";

            return string.Join(", ", new[] { number, beside, State(said) }.OfType<string>());
        }

        /// <summary>second state of three; null where no state is named.</summary>
        public string? StateInWords() => State(said);
    }

    /// <summary>A reason as the end of a sentence that has begun.</summary>
    public static string AsClause(string sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        var clause = sentence.TrimEnd('.');

        // S/P and B.A.T. keep their capitals.
        return clause is [_, >= 'a' and <= 'z' or ' ', ..] ? char.ToLowerInvariant(clause[0]) + clause[1..] : clause;
    }

    private static string Copy(EditionStatement said) =>
        $"{Which(said)} {(Size(said) is not { } size ? "of the edition" : said.Hedge == SizeHedge.None ? $"of an edition of {size}" : $"of {size}")}";

    private static string Proof(EditionStatement said, OwnWords words)
    {
        var name = NameOf(said.Series, words, 1);
        var size = Size(said);

        return $"{name}{(Own(said) is { } own ? $" {own}" : "")}{(size is null ? "" : StatementSize.IsOfTheEdition(said) ? $" beside an edition of {size}" : $" of {size}")}";
    }

    private static string Open(EditionStatement said) =>
        said.Number is not null ? $"{Which(said)} of an open edition" : said.Series is not null ? "an open edition" : "open, or without numbers";

    private static string Which(EditionStatement said) =>
        said.Letter is not null ? $"copy {Own(said)}" : said.Number is null ? "a number that is not sure," : $"number {Own(said)}";

    private static string? Own(EditionStatement said) =>
        said.Letter ?? (said.Number is { } number ? $"{Figure(number, said)}{(said.NumberIsDoubted ? ", not sure," : "")}" : null);

    private static string? Size(EditionStatement said) => said switch
    {
        { Bounds: { Least: { } least, Most: var most } } => $"between {Arabic(least)} and {Arabic(most)}",
        { Bounds: { Most: var most } } => $"at most {Arabic(most)}",
        { Of: not { } } => null,
        { Of: { } of } => (said.Hedge switch { SizeHedge.AtLeast => "at least ", SizeHedge.AtMost => "at most ", SizeHedge.About => "about ", _ => "" }) + Figure(of, said),
    };

    private static string? State(EditionStatement said) =>
        said.State is { } state ? $"{(state <= Ordinals.Length && state >= 1 ? $"{Ordinals[state - 1]} state" : $"state {Arabic(state)}")}{(said.StateOf is { } all ? $" of {Cardinal(all)}" : "")}"
        : said.Kind == StatementKind.State ? "final state"
        : null;

    private static string Counted(StatedProofs proofs, OwnWords own) => $"{Arabic(proofs.Count)} {NameOf(proofs.Series, own, proofs.Count)}";

    private static string NameOf(string? series, OwnWords own, int count) =>
        SheetReader.KindOf(series, own) is { } kind ? count == 1 ? kind.Name : kind.PluralName
        : (series is "W/P" ? "working proof" : series ?? "proof") + (count == 1 ? "" : "s");

    private static string Figure(int value, EditionStatement said) =>
        said.NumberIsRoman && value >= 1 && value <= Notation.Roman.Largest ? Notation.Roman.Write(value) : Arabic(value);

    private static string Cardinal(int count) => count >= 1 && count <= Cardinals.Length ? Cardinals[count - 1] : Arabic(count);

    private static string Arabic(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string List(IReadOnlyList<string> parts) => parts.Count == 1 ? parts[0] : $"{string.Join(", ", parts.Take(parts.Count - 1))} and {parts[^1]}";
}
