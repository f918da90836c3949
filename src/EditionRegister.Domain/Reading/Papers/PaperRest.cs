using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>What is left once the known is taken out of the words for a paper: clauses between commas, with the gaps that were made.</summary>
internal sealed class PaperRest(TokenText text)
{
    public const int Gap = -1;

    /// <summary>A point behind a longer word ends a sentence.</summary>
    public const int LongestAbbreviated = 3;

    private readonly List<List<int>> _clauses = [[]];
    private readonly List<(int Start, int Next)> _left = [];

    public void Add(int at)
    {
        if (Separates(text, at) || IsFullStop(at))
        {
            _clauses.Add([]);

            return;
        }

        if (Breaks.IsNewLine(text, at) || IsOfAnother(at))
        {
            _clauses.Add([]);
        }

        _clauses[^1].Add(at);
    }

    /// <summary>Something was read from a token on; words that only announced it go with it.</summary>
    public void TakeOut(int start)
    {
        var clause = _clauses[^1];

        while (clause.Count > 0 && clause[^1] >= start)
        {
            clause.RemoveAt(clause.Count - 1);
        }

        clause.Add(Gap);
    }

    /// <summary>What was read and belongs to nothing, such as a second weight, stays as written.</summary>
    public void Leave((int Start, int Next) read) => _left.Add(read);

    // Not the point of an initial or of an abbreviation.
    private bool IsFullStop(int at) => text.IsSign(at, '.') && text.Word(at - 1).Length > LongestAbbreviated && (at + 1 == text.Count || text.IsApart(at + 1));

    /// <summary>Printer: …, publisher: … are said of the print.</summary>
    private bool IsOfAnother(int at) => text.Word(at) is "printer" or "publisher" or "drucker" or "verleger" or "imprimeur" or "editeur" && text.IsSign(at + 1, ':');

    public static bool Separates(TokenText text, int at) => text.IsAnySign(at, ";|()[]") || (text.IsSign(at, ',') && !IsInAFigure(text, at));

    /// <summary>The comma or point of 1,220: nothing ends before it.</summary>
    public static bool IsInAFigure(TokenText text, int at) =>
        text.IsAnySign(at, ",.") && text.IsDigits(at - 1) && text.IsDigits(at + 1) && !text.IsApart(at) && !text.IsApart(at + 1);

    /// <summary>The name: the first clause, with those behind it that only tell colour, surface and making; all others are left.</summary>
    public (string? Name, IReadOnlyList<string> Left) Parts()
    {
        List<string> name = [];
        var isNoun = false;
        List<(int At, string Text)> left = [.. _left.Select(piece => (piece.Start, Slice(piece.Start, piece.Next)))];

        foreach (var clause in _clauses)
        {
            var runs = new ClauseRuns(text, clause, isFirst: name.Count == 0).Trimmed();
            List<int> tokens = [.. runs.SelectMany(run => Enumerable.Range(run.Start, run.Next - run.Start))];
            var pieces = Pieces(runs);

            if (pieces.Count > 0 && (name.Count == 0 || PaperWords.AreOfAName(text, tokens) || (!isNoun && HasNoun(tokens))))
            {
                isNoun |= HasNoun(tokens) || !PaperWords.AreOfAName(text, tokens);
                name.Add(pieces[0].Text);
                pieces.RemoveAt(0);
            }

            left.AddRange(pieces);
        }

        return (name.Count == 0 ? null : string.Join(", ", name), [.. left.OrderBy(piece => piece.At).Select(piece => piece.Text)]);
    }

    // "Heavy, wove paper with a watermark": what is heavy is told by the second clause.
    private bool HasNoun(List<int> tokens) => tokens.Exists(at => text.Word(at) is "paper" or "papers" or "papier" or "carta" or "papel" or "rag");

    /// <summary>One piece, unless what stood apart would say something new once it stands together.</summary>
    private List<(int At, string Text)> Pieces(List<(int Start, int Next)> runs)
    {
        if (runs.Count <= 1)
        {
            return runs.ConvertAll(run => (run.Start, Slice(run.Start, run.Next)));
        }

        var joined = string.Join(' ', runs.Select(run => Slice(run.Start, run.Next)));

        return PaperScan.FindsAnything(joined) ? runs.ConvertAll(run => (run.Start, Slice(run.Start, run.Next))) : [(runs[0].Start, joined)];
    }

    private string Slice(int start, int next) => text.Text[text[start].Start..text[next - 1].End];
}
