using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Wording;

/// <summary>A pass in a line: what was printed from what, and what came of its sheets.</summary>
public static class PassText
{
    /// <summary>red, key block state II · 14 in, 13 out, 1 slur.</summary>
    public static string Of(Work work, Pass pass) => $"{What(work, pass)} · {Counts(work, pass)}";

    /// <summary>Pass 3 of print run 1 of “Harbour”.</summary>
    public static string Called(Work work, PrintRun run, Pass pass) => $"Pass {Counted.Figure(pass.Ordinal)} of print run {Counted.Figure(run.Ordinal)} of {Wording.Called.Work(work)}";

    public static string What(Work work, Pass pass)
    {
        List<string> parts =
        [
            .. pass.Name is { } name ? [name] : Array.Empty<string>(),
            .. pass.Kind == "printed" ? [] : new[] { PassKinds.Plain(pass.Kind) },
            .. pass.Colours.Count == 0 ? [] : new[] { Colours(pass) },
            .. pass.Matrices.Select(used => Matrix(work, used)),
            .. pass.Side == "verso" ? ["verso"] : Array.Empty<string>(),
            .. pass.TakesAll ? [] : new[] { "some sheets only" },
        ];

        return parts.Count == 0 ? "what was printed is not noted" : string.Join(", ", parts);
    }

    /// <summary>14 in, 2 added, 13 out, 1 slur, 2 held out (progressive proof); what nobody counted is not told.</summary>
    public static string Counts(Work work, Pass pass)
    {
        List<string> parts =
        [
            .. pass.SheetsIn is { } went ? [$"{Counted.Figure(went)} in"] : Array.Empty<string>(),
            .. pass.Added is > 0 and var added ? [$"{Counted.Figure(added)} added"] : Array.Empty<string>(),
            .. pass.SheetsOut is { } came ? [$"{Counted.Figure(came)} out"] : Array.Empty<string>(),
            .. Spoiled(work, pass),
            .. pass.HeldOut is > 0 and var held ? [$"{Counted.Figure(held)} held out{Kinds(work, pass)}"] : Array.Empty<string>(),
        ];

        return parts.Count == 0 ? "sheets not counted" : string.Join(", ", parts);
    }

    private static IEnumerable<string> Spoiled(Work work, Pass pass)
    {
        foreach (var one in pass.SpoiledBy)
        {
            yield return $"{Counted.Figure(one.Sheets)} {work.OwnWords.FaultOf(one.Word)?.Name ?? one.Word}";
        }

        if ((pass.Spoiled ?? 0) - pass.SpoiledBy.Sum(one => one.Sheets) is > 0 and var rest)
        {
            yield return $"{Counted.Figure(rest)} spoiled";
        }
    }

    private static string Kinds(Work work, Pass pass) => pass.HeldOutAs switch
    {
        [] => "",
        [var one] when one.Sheets == pass.HeldOut => $" ({work.OwnWords.Kind(one.Word)?.Name ?? one.Word})",
        var several => $" ({string.Join(", ", several.Select(one => $"{Counted.Figure(one.Sheets)} {work.OwnWords.Kind(one.Word)?.Name ?? one.Word}"))})",
    };

    private static string Colours(Pass pass)
    {
        var colours = string.Join(" and ", pass.Colours.Select(colour => colour.Ink is { } ink ? $"{colour.Colour} ({ink})" : colour.Colour));

        return pass.Colours[0].Manner switch { "blend" => $"{colours} in a blend", "a-la-poupee" => $"{colours} à la poupée", _ => colours };
    }

    private static string Matrix(Work work, PassMatrix used)
    {
        var matrix = work.Matrices.FirstOrDefault(one => one.Id == used.Matrix);
        var state = matrix?.States.FirstOrDefault(one => one.Id == used.State);
        var called = matrix is null ? $"matrix {Counted.Figure(used.Matrix)}" : MatrixText.Short(matrix);

        return state is null ? called : $"{called} state {state.Name}";
    }
}
