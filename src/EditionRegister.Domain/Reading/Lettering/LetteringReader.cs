using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>
/// Reads who drew, engraved, printed or issued a print, as its lettering or the pencil below it says. A name is kept as written; where
/// none stands beside a role, the role has an empty name. It never guesses: privileges, numbers of impressions and inventories are no roles.
/// </summary>
public static class LetteringReader
{
    public static IReadOnlyList<Lettering> Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return [];
        }

        TokenText tokens = new(text);
        List<Lettering> found = [];

        for (var at = 0; at < tokens.Count;)
        {
            at = RoleWords.At(tokens, at) is { } role ? Take(tokens, role, found) : at + 1;
        }

        return found;
    }

    /// <summary>One role, or several that share a name: del. et sculp.</summary>
    private static int Take(TokenText text, RoleMet first, List<Lettering> found)
    {
        var chain = Chain(text, first);
        var last = chain[^1];

        if (Impressions.AreMeant(text, first))
        {
            return last.Next;
        }

        if (NamesBeside.Of(text, first, last) is { } name)
        {
            Add(text, chain, name.Start, name.Next, found);

            return Math.Max(last.Next, name.Next);
        }

        if (!first.NeedsName || chain.Count > 1 || (first.Start == 0 && first.Next == text.Count))
        {
            Add(text, chain, last.Next, last.Next, found);
        }

        return last.Next;
    }

    private static List<RoleMet> Chain(TokenText text, RoleMet first)
    {
        List<RoleMet> chain = [first];

        while (RoleWords.At(text, OverAnd(text, chain[^1].Next)) is { NamePlace: not NamePlace.Behind } next)
        {
            chain.Add(next);
        }

        return chain;
    }

    private static int OverAnd(TokenText text, int at)
    {
        at = text.IsSign(at, ',') ? at + 1 : at;

        return text.IsAnySign(at, "&+") || text.Word(at) is "et" or "and" or "und" or "e" or "y" ? at + 1 : at;
    }

    private static void Add(TokenText text, List<RoleMet> chain, int start, int next, List<Lettering> found)
    {
        var name = next > start ? text.Text[text[start].Start..text[next - 1].End] : "";

        foreach (var role in chain)
        {
            var (first, last) = next > start ? (Math.Min(start, role.Start), Math.Max(next, role.Next)) : (role.Start, role.Next);
            found.Add(new Lettering(role.Role, name, text[first].Start..text[last - 1].End));
        }
    }
}
