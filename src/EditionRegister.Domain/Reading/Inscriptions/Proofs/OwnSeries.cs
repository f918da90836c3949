using EditionRegister.Domain.Reading.Text;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Reading.Inscriptions.Proofs;

/// <summary>The kinds of proof that a register made for itself, met by their mark or their name as written there.</summary>
internal sealed class OwnSeries
{
    private readonly (string Writing, string Mark)[] _writings;

    public OwnSeries(OwnWords own) => _writings =
    [
        .. own.Kinds.Where(kind => kind.Mark.Length > 0)
            .SelectMany(kind => new[] { kind.Mark, kind.Mark.Replace('\'', '’'), kind.Name }.Distinct().Select(writing => (Writing: writing, kind.Mark)))
            .Where(one => one.Writing.Length > 0)
            .OrderByDescending(one => one.Writing.Length),
    ];

    public SeriesMet? At(TokenText text, int at)
    {
        foreach (var (writing, mark) in _writings)
        {
            if (End(text, at, writing) is { } next)
            {
                return new SeriesMet(mark, at, next);
            }
        }

        return null;
    }

    private static int? End(TokenText text, int at, string writing)
    {
        var end = text[at].Start + writing.Length;

        if (end > text.Text.Length || !text.Text.AsSpan(text[at].Start, writing.Length).Equals(writing, StringComparison.OrdinalIgnoreCase) || (text.IsWord(at) && text.IsWord(at - 1) && !text.IsApart(at)))
        {
            return null;
        }

        var next = at;

        while (next < text.Count && text[next].Start < end)
        {
            next++;
        }

        // The mark must not end within a word, nor be followed by more of one.
        return text[next - 1].End == end && !(text.IsWord(next) && !text.IsApart(next) && text.IsWord(next - 1)) ? next : null;
    }
}
