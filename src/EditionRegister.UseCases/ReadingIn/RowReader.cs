using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Csv;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Understands whole rows. What is wrong with one is named and the reading goes on, so that all of it is told at once.</summary>
internal sealed class RowReader(IReadOnlyList<ColumnMatch> columns, string currency, List<RowProblem> problems, OwnWords own)
{
    private static readonly string[] Standings = ["pulled", "kept", "spare", "left-out", "held-out"];
    private static readonly string[] Kinds = ["limited", "open", "varied", "unique", "unknown"];

    private readonly Dictionary<ReadInColumn, ColumnMatch> _columns =
        columns.Where(match => match.Column is not null).ToDictionary(match => match.Column!);

    /// <summary>Values that name no number, and dates that are kept as written: told in the preview.</summary>
    public List<RowProblem> Remarks { get; } = [];

    /// <summary>Texts that were read in words: told in the preview.</summary>
    public List<TextRead> Readings { get; } = [];

    public ReadRow Read(CsvRow row)
    {
        RowCells cells = new(_columns, row, problems, Remarks, Readings);
        SheetCells sheet = new(cells, own);
        var (title, titleState) = Title(cells);
        var standing = cells.Word(ReadInColumn.Standing, Standings) ?? "kept";
        var number = sheet.Number(standing);
        var (kind, extent) = EditionKind(cells);
        var money = cells.Text(ReadInColumn.Currency)?.ToUpperInvariant() ?? currency;
        var (net, netCurrency) = Net(cells, money);
        var sizes = RowSizes.Of(cells);

        ReadRow read = new()
        {
            Line = row.Line,
            Code = Code(cells),
            Maker = cells.Known(ReadInColumn.Maker),
            Title = title,
            TitleState = titleState,
            Year = cells.Date(ReadInColumn.Year),
            Technique = cells.Words(ReadInColumn.Technique, text => TechniqueAsRead.Of(text, own.Techniques)),
            Paper = cells.Words(ReadInColumn.Paper, PaperAsRead.Of),
            State = cells.Text(ReadInColumn.State),
            Standing = standing,
            EditionKind = kind,
            Extent = extent,
            Printed = cells.Date(ReadInColumn.Printed),
            Signed = cells.YesNo(ReadInColumn.Signed) ?? "unknown",
            Inscription = sheet.Inscription(),
            ImageHeight = sizes.ImageHeight,
            ImageWidth = sizes.ImageWidth,
            ImageWritten = sizes.ImageWritten,
            SheetHeight = sizes.SheetHeight,
            SheetWidth = sizes.SheetWidth,
            SheetWritten = sizes.SheetWritten,
            Condition = cells.Text(ReadInColumn.Condition),
            Place = cells.Known(ReadInColumn.Place),
            With = cells.Known(ReadInColumn.With),
            FreeToSell = cells.YesNo(ReadInColumn.FreeToSell),
            Asking = cells.Price(ReadInColumn.AskingPrice, money),
            Net = net,
            NetCurrency = netCurrency,
            Currency = money,
            Owner = cells.Known(ReadInColumn.Owner),
            Notes = cells.Text(ReadInColumn.Notes),
            Kept = [.. columns.Where(match => (match.Column is null || IsKeptToo(match.Column, sizes)) && row.Fields[match.Index].Length > 0).Select(match => (match.Header, row.Fields[match.Index]))],
        };

        return (sheet.Edition() is { } stated ? read.Stating(stated) : read).Bearing(number);
    }

    /// <summary>Sizes that say of neither image nor sheet what they are stay with the sheet as they are written.</summary>
    private static bool IsKeptToo(ReadInColumn column, RowSizes sizes) => column == ReadInColumn.Sizes && sizes is { ImageWritten: null, SheetWritten: null };

    /// <summary>Names a value that keeps the file from being read in.</summary>
    public void Problem(int line, ReadInColumn column, string value, string what) =>
        problems.Add(new RowProblem(line, _columns.TryGetValue(column, out var match) ? match.Header : column.Name, value, what));

    private static (string? Title, string State) Title(RowCells cells) => cells.Text(ReadInColumn.Title)?.Trim() switch
    {
        null or "[unknown]" => (null, "unknown"),
        "[untitled]" => (null, "untitled"),
        var title => (title, "given"),
    };

    private static RegisterCode? Code(RowCells cells)
    {
        if (cells.Text(ReadInColumn.Code) is not { } text)
        {
            return null;
        }

        if (!RegisterCode.TryParse(text, out var code))
        {
            cells.Problem(ReadInColumn.Code, text, $"is no register code; a code has the form {RegisterCode.Form}, and its last character answers for the others. Leave the cell empty to have a code drawn.");
        }

        return code;
    }

    private static (string? Kind, string? Extent) EditionKind(RowCells cells)
    {
        if (cells.Text(ReadInColumn.EditionKind) is not { } text)
        {
            return default;
        }

        var parts = text.Split(',', 2, StringSplitOptions.TrimEntries);
        var extent = parts.Length == 1 ? "whole" : parts[1] switch { "partly known" => "partly-known", "someone else's" => "someone-elses", _ => null };

        if (!Kinds.Contains(parts[0]) || extent is null)
        {
            cells.Problem(ReadInColumn.EditionKind, text, "is no kind of edition; write limited, open, varied, unique or unknown, and after a comma “partly known” or “someone else's” where it is so.");
        }

        return (parts[0], extent);
    }

    /// <summary>A net price names its currency where it is another than the row's: "126.00 USD".</summary>
    private static (long? Net, string Currency) Net(RowCells cells, string money)
    {
        var parts = cells.Text(ReadInColumn.NetPrice)?.Trim().Split(' ') ?? [];

        return parts is [var amount, { Length: 3 } own]
            ? (cells.Price(ReadInColumn.NetPrice, own, amount), own)
            : (cells.Price(ReadInColumn.NetPrice, money), money);
    }
}
