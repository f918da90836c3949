using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>The sizes of one row: in columns of millimetres, or in words. Millimetres go first; words beside them must say the same.</summary>
internal sealed record RowSizes
{
    public long? ImageHeight { get; private init; }

    public long? ImageWidth { get; private init; }

    public string? ImageWritten { get; private init; }

    public long? SheetHeight { get; private init; }

    public long? SheetWidth { get; private init; }

    public string? SheetWritten { get; private init; }

    public static RowSizes Of(RowCells cells)
    {
        var image = Written(cells, ReadInColumn.ImageSize, SizePart.Image);
        var sheet = Written(cells, ReadInColumn.SheetSize, SizePart.Sheet);
        var (imageHeight, imageWidth) = (cells.Millimetres(ReadInColumn.ImageHeight), cells.Millimetres(ReadInColumn.ImageWidth));
        var (sheetHeight, sheetWidth) = (cells.Millimetres(ReadInColumn.SheetHeight), cells.Millimetres(ReadInColumn.SheetWidth));

        return new RowSizes
        {
            ImageHeight = imageHeight ?? image?.Size.Height.Micrometres,
            ImageWidth = imageWidth ?? image?.Size.Width.Micrometres,
            ImageWritten = image?.Written,
            SheetHeight = sheetHeight ?? sheet?.Size.Height.Micrometres,
            SheetWidth = sheetWidth ?? sheet?.Size.Width.Micrometres,
            SheetWritten = sheet?.Written,
        };
    }

    /// <summary>From the column of its own, else from the one that holds several sizes, where one is named for it.</summary>
    private static RecordedSize? Written(RowCells cells, ReadInColumn own, SizePart part)
    {
        if (cells.Text(own) is { } text)
        {
            if (RecordedSize.TryRead(text, part, out var read, out var whyNot))
            {
                cells.ReadAs(own, text, read.InOtherWords);

                return read;
            }

            cells.Problem(own, text, $"was not read. {whyNot}");

            return null;
        }

        return cells.Text(ReadInColumn.Sizes) is { } sizes ? Named(cells, sizes, part) : null;
    }

    private static RecordedSize? Named(RowCells cells, string sizes, SizePart part)
    {
        var all = SizeReader.Read(sizes);

        if (all.Sizes.Any(size => size.Parts.Contains(part)) && RecordedSize.TryRead(sizes, part, out var read, out _))
        {
            cells.ReadAs(ReadInColumn.Sizes, sizes, read.InOtherWords);

            return read;
        }

        if (part == SizePart.Image && !all.Sizes.Any(size => size.Parts.Count > 0))
        {
            cells.Remark(ReadInColumn.Sizes, sizes, all.Sizes.Count == 0 ? $"was not read as a size and is kept as a note. {all.WhyNot}".TrimEnd() : "does not say whether it is the image or the sheet; it is kept as a note. Name it in the file, or map the column to image size or sheet size.");
        }

        return null;
    }
}
