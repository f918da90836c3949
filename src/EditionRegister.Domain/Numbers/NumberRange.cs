using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Numbers;

/// <summary>One part of a list of impressions: a number, a run of numbers, a mark alone, or a register code.</summary>
public sealed record NumberRange
{
    private NumberRange()
    {
    }

    /// <summary>Null where no mark is written: the numbering is then the one spoken of.</summary>
    public NumberingKind? Kind { get; private init; }

    /// <summary>The name of the numbering, where one was written (deluxe: I-X); else null.</summary>
    public string? Name { get; private init; }

    /// <summary>Null for a register code.</summary>
    public Notation? Notation { get; private init; }

    /// <summary>The first number; null for a mark alone and for a register code.</summary>
    public int? From { get; private init; }

    /// <summary>The last number, never below the first; the same for a single number.</summary>
    public int? To { get; private init; }

    /// <summary>The size, where a single number was written with one (3/12).</summary>
    public int? Of { get; private init; }

    /// <summary>The register code; null for numbers.</summary>
    public RegisterCode? Code { get; private init; }

    /// <summary>The part in one spelling, which is read again as the same part.</summary>
    public override string ToString()
    {
        if (Code is not null)
        {
            return Code.ToString();
        }

        var numbers = From is { } from ? Notation!.Write(from) + (Of is { } of ? "/" + Notation.Write(of) : To > from ? "-" + Notation.Write(To!.Value) : "") : "";

        return $"{(Name is null ? "" : Name + ": ")}{$"{Kind?.Mark} {numbers}".Trim()}";
    }

    internal NumberRange Named(string name) => this with { Name = name };

    internal static NumberRange OfCode(RegisterCode code) => new() { Code = code };

    internal static NumberRange OfRun(NumberingKind? kind, Notation notation, int from, int to) =>
        new() { Kind = kind, Notation = notation, From = from, To = to };

    internal static NumberRange OfOne(PencilledNumber number) => new()
    {
        Kind = number.Kind == NumberingKind.Numbered ? null : number.Kind,
        Notation = number.Notation,
        From = number.Number,
        To = number.Number,
        Of = number.Of,
    };
}
