using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>The tokens of a clause that stand together, without what only joined them to what was taken out.</summary>
internal sealed class ClauseRuns(TokenText text, IReadOnlyList<int> clause, bool isFirst)
{
    public List<(int Start, int Next)> Trimmed()
    {
        List<(int Start, int Next)> runs = [];
        var at = 0;

        while (at < clause.Count)
        {
            var end = at;

            while (end < clause.Count && clause[end] != PaperRest.Gap)
            {
                end++;
            }

            if (end > at && Trim(clause[at], clause[end - 1] + 1, isBehindGap: at > 0, isBeforeGap: end < clause.Count, mayBeOn: isFirst && runs.Count == 0) is { } run)
            {
                runs.Add(run);
            }

            at = end + 1;
        }

        return runs;
    }

    private (int Start, int Next)? Trim(int start, int next, bool isBehindGap, bool isBeforeGap, bool mayBeOn)
    {
        while (start < next && (IsLooseSign(start) || (isBehindGap && IsLoose(start + 1) && PaperWords.IsConnecting(text.Word(start))) || (mayBeOn && StartsName(start, next))))
        {
            start++;
        }

        while (start < next && (IsTrailingSign(text, next - 1) || (text.IsSign(next - 1, '.') && text.Word(next - 2).Length > PaperRest.LongestAbbreviated) || (isBeforeGap && (text.IsSign(next - 1, '.') || (text.IsApart(next - 1) && PaperWords.IsConnecting(text.Word(next - 1)))))))
        {
            next--;
        }

        return start < next && HasWord(start, next) ? (start, next) : null;
    }

    // A hyphen or a slash that belongs to a figure stays with it.
    private bool IsLooseSign(int at) => text.IsAnySign(at, "-:=+&/*.") && IsLoose(at + 1);

    private bool IsLoose(int at) => at >= text.Count || text.IsApart(at);

    public static bool IsTrailingSign(TokenText text, int at) => text.IsAnySign(at, "-:=+&/*") && (text.IsApart(at) || !text.IsDigits(at - 1));

    /// <summary>on kozo; Paper: kozo.</summary>
    private bool StartsName(int at, int next) =>
        at + 1 < next && ((IsLoose(at + 1) && PaperWords.IsOn(text.Word(at))) || (text.Word(at) is "paper" or "papier" or "carta" or "papel" or "support" && text.IsSign(at + 1, ':')));

    private bool HasWord(int start, int next)
    {
        for (var at = start; at < next; at++)
        {
            if (text.IsWord(at) || text.IsDigits(at))
            {
                return true;
            }
        }

        return false;
    }
}
