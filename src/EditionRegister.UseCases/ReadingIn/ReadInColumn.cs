using System.Text;
using EditionRegister.Domain.Text;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>A column the register understands, and the headers that are taken for it without being told.</summary>
public sealed record ReadInColumn
{
    private ReadInColumn(string name, params string[] headers) => (Name, Headers) = (name, [name, .. headers]);

    public static ReadInColumn Code { get; } = new("code", "register code");

    public static ReadInColumn Maker { get; } = new("maker", "artist", "artist name", "printmaker", "pupil", "student", "by");

    public static ReadInColumn Title { get; } = new("title", "work", "name of work");

    public static ReadInColumn Year { get; } = new("year", "year made", "date made", "date");

    public static ReadInColumn Technique { get; } = new("technique", "medium", "process");

    public static ReadInColumn Paper { get; } = new("paper", "support");

    public static ReadInColumn State { get; } = new("state", "state of the plate");

    public static ReadInColumn Standing { get; } = new("standing");

    public static ReadInColumn Number { get; } = new("number", "no", "nr", "ed no", "edition no", "impression", "impression no", "impression number", "edition number", "numbered", "number in edition");

    public static ReadInColumn EditionKind { get; } = new("edition kind", "kind of edition");

    public static ReadInColumn EditionSize { get; } = new("edition size", "size of edition", "edition of", "edition");

    public static ReadInColumn Printed { get; } = new("printed", "date printed", "year printed", "printing date");

    public static ReadInColumn Signed { get; } = new("signed");

    public static ReadInColumn Inscription { get; } = new("inscription", "inscribed", "inscriptions");

    public static ReadInColumn ImageHeight { get; } = new("image height mm");

    public static ReadInColumn ImageWidth { get; } = new("image width mm");

    public static ReadInColumn SheetHeight { get; } = new("sheet height mm");

    public static ReadInColumn SheetWidth { get; } = new("sheet width mm");

    public static ReadInColumn ImageSize { get; } = new("image size", "size of image", "plate size", "block size");

    public static ReadInColumn SheetSize { get; } = new("sheet size", "size of sheet", "paper size");

    /// <summary>Sizes of image and sheet in one cell, each named: "image: 30 x 22 cm; sheet: 40 x 30 cm".</summary>
    public static ReadInColumn Sizes { get; } = new("sizes", "size", "dimensions", "measurements");

    public static ReadInColumn Condition { get; } = new("condition");

    public static ReadInColumn Place { get; } = new("place", "where", "location", "drawer", "shelf");

    public static ReadInColumn With { get; } = new("with", "held by");

    public static ReadInColumn FreeToSell { get; } = new("free to sell", "for sale", "available");

    public static ReadInColumn AskingPrice { get; } = new("asking price", "price");

    public static ReadInColumn Currency { get; } = new("currency");

    public static ReadInColumn Owner { get; } = new("owner", "owned by");

    public static ReadInColumn NetPrice { get; } = new("net price");

    public static ReadInColumn Notes { get; } = new("notes", "note", "remarks", "comments", "comment");

    public static IReadOnlyList<ReadInColumn> All { get; } =
    [
        Code, Maker, Title, Year, Technique, Paper, State, Standing, Number, EditionKind, EditionSize, Printed, Signed, Inscription,
        ImageHeight, ImageWidth, SheetHeight, SheetWidth, ImageSize, SheetSize, Sizes, Condition, Place, With, FreeToSell, AskingPrice, Currency, Owner, NetPrice, Notes,
    ];

    public string Name { get; }

    /// <summary>Headers taken for this column, case, accents and punctuation ignored.</summary>
    public IReadOnlyList<string> Headers { get; }

    public static ReadInColumn? Named(string name) => All.FirstOrDefault(column => Plain(column.Name) == Plain(name));

    public static ReadInColumn? Guess(string header) => All.FirstOrDefault(column => column.Headers.Any(known => Plain(known) == Plain(header)));

    public override string ToString() => Name;

    /// <summary>Letters and digits only: "Edition_Size" and "edition size" are one header.</summary>
    internal static string Plain(string header)
    {
        StringBuilder plain = new();

        foreach (var one in SearchText.Fold(header))
        {
            plain.Append(char.IsLetterOrDigit(one) ? one : plain is [.., not ' '] ? ' ' : "");
        }

        return plain.ToString().Trim();
    }
}
