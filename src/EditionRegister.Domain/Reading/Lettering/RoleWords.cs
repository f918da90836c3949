using System.Collections.Frozen;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Lettering;

/// <summary>How the name stands to the word for a role.</summary>
internal enum NamePlace : byte
{
    /// <summary>Somebody sculpsit.</summary>
    Before,

    /// <summary>Engraved by somebody.</summary>
    Behind,

    /// <summary>Somebody imp., and imp. Somebody.</summary>
    Either,
}

/// <summary>A word for a role, met in a text.</summary>
internal readonly record struct RoleMet(LetteringRole Role, int Start, int Next, NamePlace NamePlace)
{
    /// <summary>The word is somebody's name or a common word as well, and stands for a role only beside a name.</summary>
    public bool NeedsName { get; init; }
}

/// <summary>The words for roles in the lettering of prints.</summary>
internal static class RoleWords
{
    // The Latin abbreviations and gez., gedr. and lith. after DCRMR, Appendix J (bsc.rbms.info/DCRMR/appendices/Appendix-j). Left out are inc. (a
    // firm's, today), in. (inches), fig., fac., comp., f. and a.f., which mean something else more often. Gest. and the words spelled out are common practice, no source.
    private static readonly FrozenDictionary<string, LetteringRole>.AlternateLookup<ReadOnlySpan<char>> Abbreviations = Table(
        (LetteringRole.Drew, "del delt delin delineavit dess effig effigiavit gez"),
        (LetteringRole.Designed, "inv invt invenit"),
        (LetteringRole.Painted, "pinx pinxt pinxit pingebat deping depingebat"),
        (LetteringRole.Engraved, "sc sculp sculps sculpt sculpsit sculpebat scul cael caelavit incid incidit engd gest"),
        (LetteringRole.Etched, "aquaf aquaforti"),
        (LetteringRole.Aquatinted, "aquatinta"),
        (LetteringRole.Made, "fec fect fecit faciebat"),
        (LetteringRole.Lithographed, "lith litho lithog"),
        (LetteringRole.Issued, "ex exc exct excud excudit"),
        (LetteringRole.Published, "divulg divulgavit"),
        (LetteringRole.Printed, "imp impr impressit gedr"),
        (LetteringRole.Directed, "direx direxit"));

    private static readonly FrozenDictionary<string, LetteringRole>.AlternateLookup<ReadOnlySpan<char>> Participles = Table(
        (LetteringRole.Drew, "drawn dessine dessinee disegnato dibujado gezeichnet"),
        (LetteringRole.Designed, "designed invente entworfen entwurf"),
        (LetteringRole.Painted, "painted peint dipinto pintado gemalt"),
        (LetteringRole.Engraved, "engraved engd eng grave gravee grav inciso grabado gestochen gest"),
        (LetteringRole.Etched, "etched radiert"),
        (LetteringRole.Aquatinted, "aquatinted"),
        (LetteringRole.Lithographed, "lithographed lithographie lithographiert litografato litografiado lith"),
        (LetteringRole.Published, "published publd publie publiee edite editee pubblicato publicado editado herausgegeben verlegt verlag"),
        (LetteringRole.Printed, "printed imprime imprimee imp stampato impreso gedruckt gedr druck"));

    /// <summary>The role whose word begins at a token, or null.</summary>
    public static RoleMet? At(TokenText text, int at) => text.IsWord(at) ? Spelled(text, at) ?? Abbreviated(text, at) : null;

    /// <summary>Whether an abbreviation for a role stands within a few tokens: what comes before it is a name.</summary>
    public static bool IsNear(TokenText text, int at)
    {
        for (var next = at; next < at + 5; next++)
        {
            if (Abbreviations.TryGetValue(text.Word(next), out _) && text[next].Length > 1)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Engraved by, gravé par, gest. von, Druck:</summary>
    private static RoleMet? Spelled(TokenText text, int at)
    {
        if (!Participles.TryGetValue(text.Word(at), out var role))
        {
            return null;
        }

        var next = text.IsSign(at + 1, '.') && !text.IsApart(at + 1) ? at + 2 : at + 1;

        if (IsBy(text.Word(next)))
        {
            return new RoleMet(role, at, text.IsSign(next + 1, '.') && text[next].Length == 1 ? next + 2 : next + 1, NamePlace.Behind);
        }

        // Entwurf: and Druck: head a line of a poster.
        return text.Word(at) is "druck" or "entwurf" or "verlag" && text.IsSign(at + 1, ':') ? new RoleMet(role, at, at + 2, NamePlace.Behind) { NeedsName = true } : null;
    }

    private static bool IsBy(ReadOnlySpan<char> word) => word is "by" or "par" or "von" or "v" or "da" or "por" or "bei";

    private static RoleMet? Abbreviated(TokenText text, int at)
    {
        if (!Abbreviations.TryGetValue(text.Word(at), out var role))
        {
            return null;
        }

        var isDotted = text.IsAnySign(at + 1, ".:") && !text.IsApart(at + 1);
        var next = isDotted ? at + 2 : at + 1;
        var word = text.Word(at);
        var place = word is "imp" or "impr" or "lith" or "litho" or "lithog" or "gez" or "gest" or "gedr" ? NamePlace.Either : NamePlace.Before;

        return IsAllowed(text, at, next, isDotted)
            ? new RoleMet(role, at, next, place) { NeedsName = word.Length <= 2 || (word.Length == 3 && !isDotted) || word is "litho" or "aquatinta" }
            : null;
    }

    /// <summary>Not "la linea del mar", "SC 29", "inv. no. 12", "gest. 1880", "Imp. Chap."</summary>
    private static bool IsAllowed(TokenText text, int at, int next, bool isDotted)
    {
        var word = text.Word(at);
        var behindDigits = text.IsDigits(next) || text.Word(next) is "no" or "nr" or "num" || text.IsSign(next, '#');

        return word switch
        {
            "del" or "dess" or "litho" => isDotted || !text.IsWord(next) || text.Word(next) is "et" or "and",
            "gez" or "gest" or "gedr" or "lith" or "impr" or "eng" => isDotted && !(behindDigits && word is "gest"),
            "inv" => !behindDigits && !text.IsSign(next, '-'),
            "sc" => text.Written(at) is not "SC" || isDotted,
            _ => true,
        };
    }

    private static FrozenDictionary<string, LetteringRole>.AlternateLookup<ReadOnlySpan<char>> Table(params (LetteringRole Role, string Words)[] lines) =>
        lines.SelectMany(line => line.Words.Split(' ').Select(word => (word, line.Role)))
            .ToFrozenDictionary(one => one.word, one => one.Role, StringComparer.Ordinal)
            .GetAlternateLookup<ReadOnlySpan<char>>();
}
