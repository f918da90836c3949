using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Prices;
using EditionRegister.Domain.Sizes;
using EditionRegister.Formats.Csv;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>The cells of one row, each read as what its column holds. What is wrong is named, and the reading goes on.</summary>
internal sealed class RowCells(IReadOnlyDictionary<ReadInColumn, ColumnMatch> columns, CsvRow row, List<RowProblem> problems, List<RowProblem> remarks, List<TextRead> readings)
{
    public int Line => row.Line;

    /// <summary>The value as written, or null where the cell is empty or the file has no such column.</summary>
    public string? Text(ReadInColumn column) =>
        columns.TryGetValue(column, out var match) && row.Fields[match.Index] is { Length: > 0 } value && !string.IsNullOrWhiteSpace(value) ? value : null;

    /// <summary>As <see cref="Text"/>, where "[unknown]" and "unknown" say what an empty cell says.</summary>
    public string? Known(ReadInColumn column) => Text(column) is { } value && value.Trim() is not ("[unknown]" or "unknown") ? value.Trim() : null;

    public RecordedDate Date(ReadInColumn column)
    {
        if (Text(column) is not { } text)
        {
            return RecordedDate.None;
        }

        if (!RecordedDate.TryRead(text, out var date))
        {
            Remark(column, text.Trim(), $"was not read as a date and is kept as written; its earliest and latest day are not known{(RecordedDate.WhyNot(text) is { } why ? $". {why.TrimEnd('.')}" : "")}");

            return RecordedDate.Read(text);
        }

        ReadAs(column, text, date.InOtherWords);

        return date;
    }

    /// <summary>Words that are kept as written and read beside.</summary>
    /// <param name="column">The column.</param>
    /// <param name="inOtherWords">How they are read; null where they say it plainly.</param>
    public string? Words(ReadInColumn column, Func<string, string?> inOtherWords)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        ReadAs(column, text, inOtherWords(text));

        return text;
    }

    /// <summary>Notes how a cell was read, where something was read into it.</summary>
    public void ReadAs(ReadInColumn column, string text, string? inOtherWords)
    {
        if (inOtherWords is not null)
        {
            Reading(column, text, inOtherWords);
        }
    }

    /// <summary>One of a closed list of words, written with spaces or hyphens.</summary>
    public string? Word(ReadInColumn column, IReadOnlyCollection<string> words)
    {
        if (Text(column)?.Trim().Replace(' ', '-') is not { } word)
        {
            return null;
        }

        if (!words.Contains(word))
        {
            Problem(column, Text(column)!, $"is none of {string.Join(", ", words.Select(known => known.Replace('-', ' ')))}.");
        }

        return word;
    }

    public string? YesNo(ReadInColumn column)
    {
        switch (Text(column)?.Trim().ToUpperInvariant())
        {
            case null:
                return null;
            case "YES" or "Y" or "TRUE" or "SIGNED":
                return "yes";
            case "NO" or "N" or "FALSE" or "UNSIGNED":
                return "no";
            case "UNKNOWN" or "[UNKNOWN]" or "?":
                return "unknown";
            default:
                Problem(column, Text(column)!, "is not yes, no or unknown.");

                return null;
        }
    }

    /// <summary>Micrometres, from millimetres.</summary>
    public long? Millimetres(ReadInColumn column)
    {
        if (Text(column) is not { } text)
        {
            return null;
        }

        if (Length.TryParseMillimetres(text.Trim(), out var length) && length.Micrometres > 0)
        {
            return length.Micrometres;
        }

        Problem(column, text, $"is no length; write {Length.Form}.");

        return null;
    }

    /// <summary>Minor units of the currency.</summary>
    public long? Price(ReadInColumn column, string currency, string? amountOnly = null)
    {
        if ((amountOnly ?? Text(column)) is not { } text)
        {
            return null;
        }

        if (Money.TryParse(text.Trim(), currency, out var amount))
        {
            return amount.MinorUnits;
        }

        Problem(column, text, $"is no amount in {currency}; write {Money.Form}, and the currency in three letters.");

        return null;
    }

    public void Problem(ReadInColumn column, string value, string what) => problems.Add(new RowProblem(row.Line, columns[column].Header, value, what));

    public void Remark(ReadInColumn column, string value, string what) => remarks.Add(new RowProblem(row.Line, columns[column].Header, value, what));

    /// <summary>The words of a cell were read as something.</summary>
    public void Reading(ReadInColumn column, string value, string readAs) => readings.Add(new TextRead(columns[column].Header, value, readAs));
}
