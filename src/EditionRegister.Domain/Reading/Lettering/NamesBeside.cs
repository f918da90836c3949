using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>Whose a role is: the name before it, or behind it, as the role's word has it.</summary>
internal static class NamesBeside
{
    /// <param name="text">The text.</param>
    /// <param name="first">The role the name stands before.</param>
    /// <param name="last">The role it stands behind; another one where several share a name.</param>
    public static (int Start, int Next)? Of(TokenText text, RoleMet first, RoleMet last)
    {
        var before = first.NamePlace == NamePlace.Behind ? null : Before(text, first);
        var behind = last.NamePlace == NamePlace.Before ? null : Behind(text, last);

        if (before is null || behind is null)
        {
            return before ?? behind;
        }

        // A line of its own has its own name; between two names on one line nobody can tell.
        return text.IsAnySign(first.Start - 1, "/|") ? behind : text.IsSign(last.Next - 1, '.') && char.IsUpper(text.Written(last.Start)[0]) ? null : before;
    }

    private static (int Start, int Next)? Before(TokenText text, RoleMet role)
    {
        var at = role.Start;

        // Mass-Imp.1926 and Imp-1927: a dash joins them to other lines.
        if ((text.IsSign(at - 1, '-') && !text.IsApart(at)) || text.IsSign(role.Next, '-'))
        {
            return null;
        }

        var end = OverBetween(text, at);

        return (NameWords.Before(text, end) ?? InSmallLetters(text, role)) is { } first ? (first, end) : null;
    }

    /// <summary>Over a comma, a dot, a bracket, the end of a line, or a year between a name and its role.</summary>
    private static int OverBetween(TokenText text, int at)
    {
        var end = text.IsAnySign(at - 1, ",-/|(") || (text.IsSign(at - 1, '.') && text.IsWord(at - 2) && text[at - 2].Length > 4) ? at - 1 : at;
        var year = text.IsDigits(end - 1) && text[end - 1].Length is 2 or 4 ? text.IsAnySign(end - 2, "'`") ? end - 2 : end - 1 : end;

        return year < end && text.IsSign(year - 1, ',') ? year - 1 : year;
    }

    /// <summary>Somebody sculp., with a small letter, as the first word of a line.</summary>
    private static int? InSmallLetters(TokenText text, RoleMet role) =>
        role is { NamePlace: NamePlace.Before, NeedsName: false } && role.Start == 1 && text.IsWord(0) && text[0].Length > 3 ? 0 : null;

    private static (int Start, int Next)? Behind(TokenText text, RoleMet role)
    {
        var start = text.Word(role.Next) is "de" or "by" or "par" or "von" or "v" ? role.Next + 1 : role.Next;
        start = start > role.Next && text.IsSign(start, '.') ? start + 1 : start;

        // Without a dot, "Imp Grenat" may be a colour.
        var isSaid = role.NamePlace == NamePlace.Behind || start > role.Next || text.IsSign(role.Next - 1, '.');

        return isSaid && NameWords.Behind(text, start) is { } next ? (start, next) : null;
    }
}
