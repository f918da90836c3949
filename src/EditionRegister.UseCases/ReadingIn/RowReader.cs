using System.Globalization;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Sizes;
using EditionRegister.Formats.Csv;
using Amount = EditionRegister.Domain.Money.Money;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Understands the values of one row. What is wrong is named and the reading goes on, so that all of it is told at once.</summary>
internal sealed class RowReader(IReadOnlyList<ColumnMatch> columns, string currency, List<RowProblem> problems)
{
    private static readonly string[] Standings = ["pulled", "kept", "spare", "left-out", "held-out"];
    private static readonly string[] Kinds = ["limited", "open", "varied", "unique", "unknown"];

    private readonly Dictionary<ReadInColumn, ColumnMatch> _columns =
        columns.Where(match => match.Column is not null).ToDictionary(match => match.Column!);

    private CsvRow _row = null!;

    /// <summary>Values of the number column that are no plain number, and dates that are kept as written: told in the preview.</summary>
    public List<RowProblem> Remarks { get; } = [];

    public ReadRow Read(CsvRow row)
    {
        _row = row;
        var (title, titleState) = Title();
        var (number, pencilled, notPlain) = Number();
        var (kind, extent) = EditionKind();
        var size = Text(ReadInColumn.EditionSize);
        var money = Money();
        var (net, netCurrency) = Net(money);

        return new ReadRow
        {
            Line = row.Line,
            Code = Code(),
            Maker = Known(ReadInColumn.Maker),
            Title = title,
            TitleState = titleState,
            Year = Date(ReadInColumn.Year),
            Technique = Text(ReadInColumn.Technique),
            Paper = Text(ReadInColumn.Paper),
            State = Text(ReadInColumn.State),
            Standing = Word(ReadInColumn.Standing, Standings) ?? "kept",
            Number = number,
            Pencilled = pencilled,
            NotPlain = notPlain,
            EditionKind = kind,
            Extent = extent,
            EditionIsOpen = size is "open",
            EditionSize = size is null or "open" or "unknown" ? null : Count(ReadInColumn.EditionSize, size),
            Printed = Date(ReadInColumn.Printed),
            Signed = YesNo(ReadInColumn.Signed) ?? "unknown",
            Inscription = Text(ReadInColumn.Inscription),
            ImageHeight = Millimetres(ReadInColumn.ImageHeight),
            ImageWidth = Millimetres(ReadInColumn.ImageWidth),
            SheetHeight = Millimetres(ReadInColumn.SheetHeight),
            SheetWidth = Millimetres(ReadInColumn.SheetWidth),
            Condition = Text(ReadInColumn.Condition),
            Place = Known(ReadInColumn.Place),
            With = Known(ReadInColumn.With),
            FreeToSell = YesNo(ReadInColumn.FreeToSell),
            Asking = Price(ReadInColumn.AskingPrice, money),
            Net = net,
            NetCurrency = netCurrency ?? money,
            Currency = money,
            Owner = Known(ReadInColumn.Owner),
            Notes = Text(ReadInColumn.Notes),
            Kept = [.. columns.Where(match => match.Column is null && row.Fields[match.Index].Length > 0).Select(match => (match.Header, row.Fields[match.Index]))],
        };
    }

    /// <summary>Names a value that keeps the file from being read in.</summary>
    public void Problem(int line, ReadInColumn column, string value, string what) =>
        problems.Add(new RowProblem(line, _columns.TryGetValue(column, out var match) ? match.Header : column.Name, value, what));

    /// <summary>The value as written, or null where the cell is empty or the file has no such column.</summary>
    private string? Text(ReadInColumn column) =>
        _columns.TryGetValue(column, out var match) && _row.Fields[match.Index] is { Length: > 0 } value && !string.IsNullOrWhiteSpace(value) ? value : null;

    /// <summary>As <see cref="Text"/>, where "[unknown]" and "unknown" say what an empty cell says.</summary>
    private string? Known(ReadInColumn column) => Text(column) is { } value && value.Trim() is not ("[unknown]" or "unknown") ? value.Trim() : null;

    private (string? Title, string State) Title() => Text(ReadInColumn.Title)?.Trim() switch
    {
        null or "[unknown]" => (null, "unknown"),
        "[untitled]" => (null, "untitled"),
        var title => (title, "given"),
    };

    private RegisterCode? Code()
    {
        if (Text(ReadInColumn.Code) is not { } text)
        {
            return null;
        }

        if (!RegisterCode.TryParse(text, out var code))
        {
            Problem(ReadInColumn.Code, text, $"is no register code; a code has the form {RegisterCode.Form}, and its last character answers for the others. Leave the cell empty to have a code drawn.");
        }

        return code;
    }

    private (PencilledNumber? Number, string? Pencilled, string? NotPlain) Number()
    {
        if (Text(ReadInColumn.Number) is not { } text || text.Trim() is "unknown" or "[unknown]")
        {
            return default;
        }

        if (PencilledNumber.TryParse(text, out var number, out var why))
        {
            return (number, text.Trim(), null);
        }

        if (why == PencilReading.OutOfRange)
        {
            Problem(ReadInColumn.Number, text, $"no sheet can have this number; the form is that of {PencilledNumber.Form} If the sheet really says so, put it in the inscription column.");

            return default;
        }

        Remark(ReadInColumn.Number, text, "is no plain number; it is kept as the inscription, and the number is unknown");

        return (null, null, text);
    }

    private (string? Kind, string? Extent) EditionKind()
    {
        if (Text(ReadInColumn.EditionKind) is not { } text)
        {
            return default;
        }

        var parts = text.Split(',', 2, StringSplitOptions.TrimEntries);
        var extent = parts.Length == 1 ? "whole" : parts[1] switch { "partly known" => "partly-known", "someone else's" => "someone-elses", _ => null };

        if (!Kinds.Contains(parts[0]) || extent is null)
        {
            Problem(ReadInColumn.EditionKind, text, "is no kind of edition; write limited, open, varied, unique or unknown, and after a comma “partly known” or “someone else's” where it is so.");
        }

        return (parts[0], extent);
    }

    private RecordedDate Date(ReadInColumn column)
    {
        var date = RecordedDate.Read(Text(column));

        if (date.IsKnown && !Edtf.TryParse(date.Text, out _))
        {
            Remark(column, date.Text!, "is kept as written; its earliest and latest day are not known");
        }

        return date;
    }

    private string? Word(ReadInColumn column, string[] words)
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

    private string? YesNo(ReadInColumn column)
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

    private int? Count(ReadInColumn column, string text)
    {
        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= 999_999)
        {
            return count;
        }

        Problem(column, text, "is no size; write a whole number, or open, or unknown.");

        return null;
    }

    private long? Millimetres(ReadInColumn column)
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

    private string Money() => Text(ReadInColumn.Currency)?.ToUpperInvariant() ?? currency;

    /// <summary>A net price names its currency where it is another than the row's: "126.00 USD".</summary>
    private (long? Net, string? Currency) Net(string money)
    {
        var parts = Text(ReadInColumn.NetPrice)?.Trim().Split(' ') ?? [];

        return parts is [var amount, { Length: 3 } own] ? (Price(ReadInColumn.NetPrice, own, amount), own) : (Price(ReadInColumn.NetPrice, money), money);
    }

    private long? Price(ReadInColumn column, string money, string? amountOnly = null)
    {
        if ((amountOnly ?? Text(column)) is not { } text)
        {
            return null;
        }

        if (Amount.TryParse(text.Trim(), money, out var amount))
        {
            return amount.MinorUnits;
        }

        Problem(column, text, $"is no amount in {money}; write {Amount.Form}, and the currency in three letters.");

        return null;
    }

    private void Problem(ReadInColumn column, string value, string what) => Problem(_row.Line, column, value, what);

    private void Remark(ReadInColumn column, string value, string what) => Remarks.Add(new RowProblem(_row.Line, _columns[column].Header, value, what));
}
