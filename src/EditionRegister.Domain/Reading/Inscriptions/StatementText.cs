using System.Globalization;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions.Copies;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Writes a statement so that reading it gives the same values.</summary>
internal static class StatementText
{
    public static string Write(EditionStatement said)
    {
        if (said.Kind is StatementKind.None or StatementKind.Declined)
        {
            return "";
        }

        var copy = said.Kind switch
        {
            StatementKind.Proof => Proof(said),
            StatementKind.Numbered => Copy(said),
            StatementKind.Open => Open(said),
            StatementKind.Size => Size(said) is not { } size ? "" : said is { NumberIsRoman: true, Of: <= 200 } ? $"?/{size}" : $"edition of {size}",
            _ => "",
        };
        var beside = string.Join(' ', said.Beside.Select(proofs => string.Create(CultureInfo.InvariantCulture, $"+ {proofs.Count} {proofs.Series}")));

        return string.Join(", ", new[] { copy.Length > 0 && beside.Length > 0 ? $"{copy} {beside}" : copy + beside, State(said) }.Where(part => part.Length > 0));
    }

    private static string Proof(EditionStatement said)
    {
        var size = Size(said);

        return said.Letter is { } letter ? $"{said.Series} {letter}{(size is null ? "" : $", edition of {size}")}"
            : IsMixed(said) && IsYearLike(said) ? $"{said.Series} {Figure(said.Number!.Value, said)}, edition of {size}"
            : said.Number is not { } number ? $"{said.Series}{(size is null ? "" : said.NumberIsRoman ? $" ?/{size}" : IsLarge(said) ? $", edition of {size}" : $"/{size}")}"
            : $"{said.Series} {(size is null && !said.NumberIsDoubted && !said.NumberIsRoman && number > 31 ? "no. " : "")}{Figure(number, said)}{Doubt(said)}{(size is not null ? $"/{size}" : said.NumberIsDoubted || (said.NumberIsRoman && number > 31) ? "/?" : "")}";
    }

    private static string Copy(EditionStatement said)
    {
        var size = Size(said);

        return said.Letter is { } letter ? size is null ? $"copy {letter}" : $"{letter} of edition of {size}"
            : IsMixed(said) && IsYearLike(said) ? $"edition no. {Figure(said.Number!.Value, said)}, edition of {size}"
            : size is not null || said.NumberIsDoubted ? $"{(IsLarge(said) ? "ed. " : "")}{Figure(said.Number ?? 0, said)}{Doubt(said)}/{size ?? "?"}"
            : $"edition no. {Figure(said.Number ?? 0, said)}";
    }

    /// <summary>A roman number of an edition that nobody would count in roman.</summary>
    private static bool IsMixed(EditionStatement said) => said is { NumberIsRoman: true, Number: not null, Of: > 200 };

    /// <summary>II/2026 is a month and a year.</summary>
    private static bool IsYearLike(EditionStatement said) => said.Of is { } of && DateParts.IsModernYear(of) && !said.NumberIsDoubted;

    /// <summary>A figure that would be taken for a year, or for a file's, if nothing said what it is.</summary>
    private static bool IsLarge(EditionStatement said) => said.Of >= 1_000 && !said.NumberIsRoman;

    private static string Open(EditionStatement said) =>
        said.Number is { } copy ? $"{Figure(copy, said)}{Doubt(said)}/unlimited" : said.Series is null ? "unlimited" : "?/unlimited";

    private static string Doubt(EditionStatement said) => said.NumberIsDoubted ? "(?)" : "";

    private static string? Size(EditionStatement said) => said switch
    {
        { Of: { } of } => Hedge(said.Hedge) + (IsMixed(said) ? of.ToString(CultureInfo.InvariantCulture) : Figure(of, said)),
        { Bounds: { Least: { } least, Most: var most } } => string.Create(CultureInfo.InvariantCulture, $"between {least} and {most}"),
        { Bounds: { Most: var atMost } } => string.Create(CultureInfo.InvariantCulture, $"at most {atMost}"),
        _ => null,
    };

    private static string State(EditionStatement said) =>
        said.State is not { } state ? said.Kind == StatementKind.State ? "final state" : ""
        : said.StateIsRoman ? $"state {Notation.Roman.Write(state)}{(said.StateOf is { } all ? $" of {Notation.Roman.Write(all)}" : "")}"
        : string.Create(CultureInfo.InvariantCulture, $"state {state}{(said.StateOf is { } of ? $" of {of}" : "")}");

    private static string Figure(int value, EditionStatement said) => said.NumberIsRoman ? Notation.Roman.Write(value) : value.ToString(CultureInfo.InvariantCulture);

    private static string Hedge(SizeHedge hedge) => hedge switch { SizeHedge.AtLeast => "at least ", SizeHedge.About => "about ", _ => "" };
}
