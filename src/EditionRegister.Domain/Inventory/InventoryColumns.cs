namespace EditionRegister.Domain.Inventory;

/// <summary>The columns of the inventory, by their permanent names and in their order.</summary>
public static class InventoryColumns
{
    public const string Code = "code";
    public const string Maker = "maker";
    public const string Title = "title";
    public const string Year = "year";
    public const string Technique = "technique";
    public const string Paper = "paper";
    public const string State = "state";
    public const string Standing = "standing";
    public const string Number = "number";
    public const string EditionKind = "edition kind";
    public const string EditionSize = "edition size";
    public const string Printed = "printed";
    public const string Signed = "signed";
    public const string Inscription = "inscription";
    public const string ImageHeight = "image height mm";
    public const string ImageWidth = "image width mm";
    public const string SheetHeight = "sheet height mm";
    public const string SheetWidth = "sheet width mm";
    public const string Condition = "condition";
    public const string Place = "place";
    public const string With = "with";
    public const string FreeToSell = "free to sell";
    public const string AskingPrice = "asking price";
    public const string Currency = "currency";
    public const string Owner = "owner";
    public const string NetPrice = "net price";
    public const string Notes = "notes";

    public static IReadOnlyList<string> Standard { get; } =
    [
        Code, Maker, Title, Year, Technique, Paper, State, Standing, Number, EditionKind, EditionSize, Printed, Signed, Inscription,
        ImageHeight, ImageWidth, SheetHeight, SheetWidth, Condition, Place, With, FreeToSell, AskingPrice, Currency,
    ];

    /// <summary>On request, after the others: what only the keeper of the register should see.</summary>
    public static IReadOnlyList<string> OnRequest { get; } = [Owner, NetPrice, Notes];

    public static IReadOnlyList<string> Names(bool owners) => owners ? [.. Standard, .. OnRequest] : Standard;
}
