using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What takes some certainty from a size.</summary>
internal enum Hedge : byte
{
    None,
    About,
    Irregular,
}

/// <summary>Words for about and irregular, beside a size.</summary>
internal static class Hedges
{
    public static Hedge At(TokenText text, int at, out int next)
    {
        var hedge = text.Word(at) switch
        {
            "c" or "ca" or "circa" or "zirka" or "about" or "approx" or "approximately" or "etwa" or "environ" or "env" or "variable" or "vary" or "varies" or "unconfirmed" => Hedge.About,
            "irreg" or "irregular" or "irregularly" or "uneven" or "unregelmasig" or "irregulier" or "irregolare" => Hedge.Irregular,
            _ => text.IsAnySign(at, "~\u2248") ? Hedge.About : Hedge.None,
        };
        next = hedge == Hedge.None ? at : text.IsSign(at + 1, '.') ? at + 2 : at + 1;

        return hedge;
    }
}
