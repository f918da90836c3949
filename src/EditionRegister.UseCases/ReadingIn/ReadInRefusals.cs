using System.Globalization;
using EditionRegister.Domain;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Why a file is not read in.</summary>
public static class ReadInRefusals
{
    private const int Shown = 50;

    public static RefusedException MapNotRead(string map) =>
        new("map-not-read", $"“{map}” does not say which column is which. Nothing was read in. Write the file's header and the register's column, as in --map \"Edition no.=number\"; with nothing after the sign the column is kept as a note.");

    public static RefusedException MapHeaderUnknown(string header, IReadOnlyList<string> headers) =>
        new("map-header-unknown", $"The file has no column “{header}”. Nothing was read in. Its columns are {string.Join(", ", headers)}.");

    public static RefusedException MapColumnUnknown(string name) =>
        new("map-column-unknown", $"The register has no column “{name}”. Nothing was read in. Its columns are {string.Join(", ", ReadInColumn.All)}.");

    public static RefusedException ColumnTwice(ReadInColumn column, IEnumerable<string> headers) =>
        new("column-twice", $"{string.Join(" and ", headers)} cannot both be the {column}. Nothing was read in. Take one of them for another column, or for nothing, which keeps it as a note.");

    public static RefusedException FileMissing(string path) =>
        new("file-not-found", $"There is no file {path}. Nothing was read in. Look at its name and folder.");

    public static RefusedException FileUnreadable(string path, string why) =>
        new("file-unreadable", $"{path} cannot be read: {why.TrimEnd('.')}. Nothing was read in. Close the program that has it open, or look whether you may read it.");

    public static RefusedException NoRows(string file) =>
        new("file-has-no-rows", $"{file} has a header and no rows under it. Nothing was read in. Write one row for each impression.");

    public static RefusedException BadRows(string file, IReadOnlyList<RowProblem> problems)
    {
        var lines = problems.Take(Shown).Select(problem => "\n  " + problem);
        var rest = problems.Count > Shown ? string.Create(CultureInfo.InvariantCulture, $"\n  and {problems.Count - Shown} more.") : "";
        var count = string.Create(CultureInfo.InvariantCulture, $"{problems.Count} {(problems.Count == 1 ? "thing" : "things")}");

        return new RefusedException("rows-not-read", $"{file} was not read in, because of {count}. Nothing was changed. Put {(problems.Count == 1 ? "it" : "them")} right and read the file in again.{string.Concat(lines)}{rest}");
    }

    public static RefusedException NoSuchBatch(long batch) =>
        new("batch-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no batch {batch} that still stands. Nothing was changed. `edreg log` shows which entries are of one batch."));

    public static RefusedException NotUndoable(long batch, string why) =>
        new("batch-not-undoable", string.Create(CultureInfo.InvariantCulture, $"Batch {batch} cannot be undone: {why}. Nothing was changed. Put single things right instead."));

    public static RefusedException BuiltOn(long batch, string what) =>
        new("batch-built-on", string.Create(CultureInfo.InvariantCulture, $"Batch {batch} cannot be undone: something was built on it since ({what}). Nothing was changed. Put single things right instead."));
}

/// <summary>One value that keeps a file from being read in: its physical line, its column as the file calls it, the value, and what is wrong.</summary>
public sealed record RowProblem(int Line, string Column, string Value, string What)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"line {Line}, {Column} “{Value}”: {What}");
}
