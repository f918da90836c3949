using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Walks a text and gathers its dates, each under the word that says what happened then.</summary>
internal sealed class DatesMet
{
    private readonly TokenText _text;
    private readonly List<DateMet> _met = [];

    public DatesMet(TokenText text)
    {
        _text = text;
        string? role = null;
        var (depth, elsewhere) = (0, false);

        for (var at = 0; at < text.Count;)
        {
            depth = text.IsAnySign(at, "([") ? depth + 1 : text.IsAnySign(at, ")]") ? Math.Max(0, depth - 1) : depth;
            elsewhere = (elsewhere && !text.IsAnySign(at, ";,)")) || SpeaksOfSomethingElse(at);
            role = RoleAt(at) ?? (text.IsAnySign(at, ";") ? null : role);

            if (DateSpans.At(text, at) is { } span)
            {
                _met.Add(new DateMet(role, span, InBrackets: depth > 0, elsewhere || IsAfterAnother(at)));
                at = span.Next;
            }
            else
            {
                at++;
            }
        }

        // A period's years in brackets, or what a thing is like, only count where there is nothing else.
        if (_met.Any(met => met.Role is null && !met.InBrackets && !met.OfAnother))
        {
            _met.RemoveAll(met => met.Role is null && (met.InBrackets || met.OfAnother));
        }
    }

    public ReadDate? Answer()
    {
        var later = _met.Where(one => one.Role is not null).ToList();
        var own = _met.Where(one => one.Role is null).Select(one => one.Span).ToList();
        var main = own.Count > 0 ? own : [.. later.Take(1).Select(one => one.Span)];

        if (main.Count == 0)
        {
            return null;
        }

        var printed = own.Count > 0 && later.Count > 0 ? new LaterDate(later[0].Role!, Bound(later[0].Span, first: true), Bound(later[0].Span, first: false))
            : own.Count == 0 ? new LaterDate(later[0].Role!, Bound(later[0].Span, first: true), Bound(later[0].Span, first: false))
            : Undated();

        return main.Count == 1
            ? new ReadDate(main[0].Edtf, Bound(main[0], first: true), Bound(main[0], first: false), printed, IsUndated: false)
            : Several(main, printed);
    }

    private static int? Bound(DateSpanRead span, bool first) => first ? span.Earliest : span.Latest;

    /// <summary>1828, 1843: from the first to the last.</summary>
    private static ReadDate Several(List<DateSpanRead> main, LaterDate? printed)
    {
        var (first, last) = (main.Min(span => span.Earliest), main.Max(span => span.Latest));

        return new ReadDate(first < 1 ? null : $"{Years.Iso(first)}/{Years.Iso(last)}", first, last, printed, IsUndated: false);
    }

    /// <summary>Printed later, with no date of its own.</summary>
    private LaterDate? Undated()
    {
        for (var at = 0; at < _text.Count; at++)
        {
            if (RoleAt(at) is { } role)
            {
                return new LaterDate(role, null, null);
            }
        }

        return null;
    }

    /// <summary>In the style of the 16th century, with a later mount: not this sheet's date.</summary>
    private bool SpeaksOfSomethingElse(int at) =>
        (_text.Word(at) is "in" && _text.Word(at + 1) is "the" && _text.Word(at + 2) is "style" or "manner") || _text.Word(at) is "with" or "style" or "copying";

    /// <summary>After a negative, an original, a design of 1802.</summary>
    private bool IsAfterAnother(int at)
    {
        if (_text.Word(at) is not "after")
        {
            return false;
        }

        for (var next = at + 1; next < Math.Min(at + 9, _text.Count) && !_text.IsAnySign(next, ",;)"); next++)
        {
            if (_text.Word(next) is "original" or "design" or "negative" or "daguerreotype" or "photograph" or "painting" or "drawing" or "model")
            {
                return true;
            }
        }

        return false;
    }

    private string? RoleAt(int at) => _text.Word(at) switch
    {
        "exhibited" or "copyright" or "repaired" or "remade" or "recut" or "annotated" or "altered" or "restored" or "enlarged" or "reconstruction" or "manufactured" or "produced"
            or "assembled" or "edition" or "patent" => _text.Written(at).ToString().ToLowerInvariant(),
        "fired" => "fired",
        "printed" or "print" or "imprime" or "gedruckt" or "stampato" or "impreso" => "printed",
        "reprinted" or "restrike" => "reprinted",
        "published" or "publication" or "issued" => "published",
        "cast" or "recast" => "cast",
        _ => null,
    };
}

/// <summary>A date as it was met: what happened then, and whether it is this sheet's own.</summary>
internal readonly record struct DateMet(string? Role, DateSpanRead Span, bool InBrackets, bool OfAnother);
