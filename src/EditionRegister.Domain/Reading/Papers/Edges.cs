using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Finds what is said of edges: deckle on four sides, four deckles, Büttenrand, 4 barbes, cut on two sides, torn edges.</summary>
internal static class Edges
{
    /// <param name="text">The text.</param>
    /// <param name="at">Where it would begin.</param>
    /// <param name="floor">The token after what was read before; what stands before it denies nothing.</param>
    /// <param name="next">The token after it.</param>
    public static PaperEdge? At(TokenText text, int at, int floor, out int next)
    {
        var sides = Count(text, at, out var word);

        return KindAt(text, word, out next) is { } kind && !(at > floor && !Breaks.IsBefore(text, at) && IsDenied(text, at - 1)) ? Sides(text, kind, sides, ref next) : null;
    }

    private static PaperEdge Sides(TokenText text, EdgeKind kind, int? before, ref int next)
    {
        var end = next;
        var behind = Breaks.IsNewLine(text, next) ? null : SidesBehind(text, next, out end);
        next = behind is null ? next : end;

        return new PaperEdge(kind, before ?? behind);
    }

    /// <summary>A number of sides before the word: four, 4, all, vierseitiger; the same token where there is none.</summary>
    private static int? Count(TokenText text, int at, out int next)
    {
        int? sides = text.Word(at) switch
        {
            "all" or "allseitig" or "allseitigem" or "allseitiger" or "vierseitig" or "vierseitigem" or "vierseitiger" => 4,
            "both" or "beide" or "beiden" or "zweiseitig" or "zweiseitigem" or "zweiseitiger" => 2,
            "dreiseitig" or "dreiseitigem" or "dreiseitiger" => 3,
            "einseitig" or "einseitigem" or "einseitiger" => 1,
            _ => Numerals.Cardinal(text, at) is { Value: >= 1 and <= 4, Next: var after } number && after == at + 1 && !text.IsAnySign(after, "./") ? number.Value : null,
        };
        next = sides is null ? at : at + 1;

        return sides;
    }

    private static EdgeKind? KindAt(TokenText text, int at, out int next)
    {
        next = at + 1;

        if (text.Word(at) is "deckle" or "deckles" or "deckled" or "buttenrand" or "buttenrander" or "buttenrandern" or "barbes" or "barbe" or "barbas")
        {
            next = EdgeWord(text, next);

            return EdgeKind.Deckle;
        }

        if (text.IsWord(at, "bords") && text.Word(at + 1) is "franges")
        {
            next = at + 2;

            return EdgeKind.Deckle;
        }

        return MadeAt(text, at, out next);
    }

    /// <summary>Cut and torn are said of much; only beside a word for edges, or as all that is said, are they edges.</summary>
    private static EdgeKind? MadeAt(TokenText text, int at, out int next)
    {
        var isBehind = IsEdge(text.Word(at));
        var word = isBehind ? at + 1 : at;
        EdgeKind? kind = text.Word(word) switch
        {
            "cut" or "trimmed" or "beschnitten" or "geschnitten" or "rogne" or "rognes" or "coupe" or "coupes" or "rifilato" or "rifilati" or "tagliati" or "cortados" => EdgeKind.Cut,
            "torn" or "gerissen" or "dechires" or "strappati" => EdgeKind.Torn,
            _ => null,
        };
        next = word + 1;

        if (kind is null || isBehind)
        {
            return kind;
        }

        var edge = EdgeWord(text, next);
        var isSaid = edge > next || SidesBehind(text, next, out _) is not null || (IsBoundary(text, at - 1) && IsBoundary(text, next));
        next = edge;

        return isSaid ? kind : null;
    }

    private static int EdgeWord(TokenText text, int at)
    {
        var word = text.IsSign(at, '-') ? at + 1 : at;

        return IsEdge(text.Word(word)) || text.Word(word) is "edged" ? word + 1 : at;
    }

    /// <summary>on four sides, on all sides, an vier Seiten, sur 4 côtés, all round.</summary>
    private static int? SidesBehind(TokenText text, int at, out int next)
    {
        if (text.Word(at) is "rundum" or "ringsum" || (text.IsWord(at, "all") && text.Word(at + 1) is "round" or "around"))
        {
            next = text.IsWord(at, "all") ? at + 2 : at + 1;

            return 4;
        }

        var start = text.Word(at) is "on" or "at" or "along" or "an" or "auf" or "sur" or "su" or "sobre" or "en" ? at + 1 : at;
        start = text.Word(start) is "the" or "den" or "les" or "i" or "los" ? start + 1 : start;
        var sides = start == at ? null : text.Word(start) is "allen" or "tous" or "tutti" or "todos" ? 4 : Count(text, start, out _);
        next = start + 2;

        return sides is not null && (IsEdge(text.Word(start + 1)) || text.Word(start + 1) is "side" or "sides" or "seite" or "seiten" or "cote" or "cotes" or "lato" or "lati" or "lado" or "lados") ? sides : null;
    }

    private static bool IsEdge(ReadOnlySpan<char> word) =>
        word is "edge" or "edges" or "rand" or "rander" or "kante" or "kanten" or "bord" or "bords" or "bordo" or "bordi" or "borde" or "bordes" or "margini";

    private static bool IsBoundary(TokenText text, int at) => at < 0 || at >= text.Count || PaperRest.Separates(text, at);

    // NOT in capitals is a surface.
    private static bool IsDenied(TokenText text, int at) =>
        text.Word(at) is "no" or "without" or "ohne" or "kein" or "keine" or "sans" or "senza" or "sin" or "false" or "simulated" or "imitation" or "faux" or "finti" || (text.IsWord(at, "not") && text.Written(at) is not "NOT");
}
