using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Tui.ReadingIn;

/// <summary>What each column of a file means, where the guess from its heading is not right.</summary>
internal static class ColumnsForm
{
    private static readonly string[] Names = [.. ReadInColumn.All.Select(column => column.Name)];

    /// <param name="report">The file as it is understood now.</param>
    /// <param name="mapped">Takes what was said and what the file is understood as then, once it holds together.</param>
    /// <param name="look">Looks into the file with what was said; refuses where that cannot be.</param>
    public static Form Of(ReadInReport report, Action<IReadOnlyList<string>, ReadInReport> mapped, Func<IReadOnlyList<string>, Task<ReadInReport>> look) => new(
        $"The columns of {report.File}",
        [.. report.Columns.Select(FieldOf)],
        async form =>
        {
            List<string> maps = [.. report.Columns.Where(match => match.WasSaid || form[match.Header] != match.Column?.Name).Select(match => $"{match.Header}={form[match.Header]}")];
            mapped(maps, await look(maps));

            return new Saved("");
        })
    {
        About = ["On the left what the file calls its columns, on the right what they are in the register."],
    };

    private static Field FieldOf(ColumnMatch match) => new(match.Header, match.Column?.Name ?? "")
    {
        Form = "its name in the register; F3 offers them; empty keeps it as a note",
        Known = Offered,
        Wrong = WrongName,
    };

    /// <summary>What holds the letters typed; behind a whole name all the others, for going through them.</summary>
    private static IReadOnlyList<string> Offered(string typed)
    {
        var at = Array.IndexOf(Names, typed.Trim());
        var folded = SearchText.Fold(typed.Trim());

        return at >= 0 ? [.. Names[(at + 1)..], .. Names[..at]] : [.. Names.Where(name => SearchText.Fold(name).Contains(folded, StringComparison.Ordinal))];
    }

    private static string? WrongName(string typed) => ReadInColumn.Named(typed) is null ? $"The register has no column “{typed}”. Its columns are {string.Join(", ", Names)}." : null;
}
