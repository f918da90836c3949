using System.Globalization;
using EditionRegister.Domain.Numbers;

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

        var number = said.Kind switch
        {
            StatementKind.Proof => Proof(said),
            StatementKind.Numbered => Copy(said),
            StatementKind.Open => said.Number is { } copy ? $"{Figure(copy, said)}/unlimited" : said.Series is null ? "unlimited" : "?/unlimited",
            StatementKind.Size => Size(said),
            _ => "",
        };
        var beside = said.Beside.Select(proofs => string.Create(CultureInfo.InvariantCulture, $"+ {proofs.Count} {proofs.Series}"));

        return string.Join(' ', new[] { number }.Concat(beside).Append(State(said)).Where(part => part.Length > 0));
    }

    private static string Proof(EditionStatement said) => said.Series
        + (said.Letter is { } letter ? $" {letter}" : said.Number is { } number ? $" {Figure(number, said)}" : "")
        + (said.Of is not { } of ? "" : said.Letter is not null || said.Number is null ? said.Letter is null ? $"/{Hedge(said)}{Figure(of, said)}" : "" : $"/{Hedge(said)}{Figure(of, said)}");

    private static string Copy(EditionStatement said) =>
        said.Letter is { } letter ? $"{letter} of edition of {Hedge(said)}{Figure(said.Of ?? 0, said)}"
        : said.Of is { } of ? $"{Figure(said.Number ?? 0, said)}/{Hedge(said)}{Figure(of, said)}"
        : said.Hedge == SizeHedge.None ? $"edition no. {Figure(said.Number ?? 0, said)}"
        : $"{Figure(said.Number ?? 0, said)}/between 2 and 3";

    private static string Size(EditionStatement said) =>
        said.Of is { } of ? $"edition of {Hedge(said)}{Figure(of, said)}"
        : said.Hedge == SizeHedge.AtMost ? "less than 2"
        : said.Hedge == SizeHedge.About ? "between 2 and 3"
        : "";

    private static string State(EditionStatement said) =>
        said.State is not { } state ? said.Kind == StatementKind.State ? "final state" : ""
        : said.StateIsRoman ? $"state {Notation.Roman.Write(state)}{(said.StateOf is { } all ? $" of {Notation.Roman.Write(all)}" : "")}"
        : string.Create(CultureInfo.InvariantCulture, $"state {state}{(said.StateOf is { } of ? $" of {of}" : "")}");

    private static string Figure(int value, EditionStatement said) => said.NumberIsRoman ? Notation.Roman.Write(value) : value.ToString(CultureInfo.InvariantCulture);

    private static string Hedge(EditionStatement said) => said.Hedge switch
    {
        SizeHedge.AtLeast => "at least ",
        SizeHedge.AtMost => "at most ",
        SizeHedge.About => "about ",
        _ => "",
    };
}
