using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Registers;
using Book = EditionRegister.Domain.People.AddressBook;

namespace EditionRegister.Tui.Welcome;

/// <summary>Changes the settings of the register that is open.</summary>
internal static class SettingsForm
{
    private const string Called = "What it is called";
    private const string Writer = "Who writes in it";
    private const string Right = "Labels to the right, mm";
    private const string Down = "Labels down, mm";

    public static async Task<Opening?> OpenAsync(Desk desk)
    {
        var (settings, book) = await desk.Store.Do(register => (register.Settings, register.LookAround.Book()));

        return Of(desk, settings, book);
    }

    private static Form Of(Desk desk, RegisterSettings seen, Book book) => new("The register's settings", [
        new Field(Called, seen.Name) { IsNeeded = true, Form = "at the top of the screen, and on lists" },
        Fields.Known(Writer, [.. book.People.Values.Select(person => person.Name).OfType<string>()], "a name of the address book, kept with every entry; empty names nobody", seen.By is { } by ? book.NameOf(by) : ""),
        SettingsFields.Currency(seen.Currency),
        SettingsFields.Sizes(seen.Units),
        SettingsFields.Writing(seen.SizeWriting.Word),
        SettingsFields.Paper(seen.Page.Word),
        SettingsFields.Link(seen.BaseUrl ?? ""),
        Millimetres(Right, seen.PrinterOffset.Right),
        Millimetres(Down, seen.PrinterOffset.Down),
    ], form => SaveAsync(desk, form, seen))
    {
        Caution = "These count for what is printed from now on; what was issued stays as it was. Prices keep the currency they were recorded in.",
    };

    private static Field Millimetres(string label, double given) => new(label, given.ToString(CultureInfo.InvariantCulture))
    {
        IsNeeded = true,
        Form = "what your label printer gets wrong, such as 0.5 or -1",
        Wrong = typed => Offset(typed) is null ? $"“{typed}” are no millimetres from -20 to 20: write 0.5 or -1." : null,
    };

    private static double? Offset(string? typed) =>
        double.TryParse(typed, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var read) && Math.Abs(read) <= PrinterOffset.Most ? read : null;

    private static async Task<Saved> SaveAsync(Desk desk, Form form, RegisterSettings seen)
    {
        SettingsCorrection correction = new()
        {
            Name = Changed(form, Called),
            Writer = Changed(form, Writer),
            Currency = Changed(form, SettingsFields.CurrencyLabel),
            Units = Changed(form, SettingsFields.SizesLabel),
            SizeWriting = Changed(form, SettingsFields.WritingLabel) is null ? null : SettingsFields.WritingOf(form),
            Page = Changed(form, SettingsFields.PaperLabel) is null ? null : SettingsFields.PageOf(form),
            BaseUrl = Changed(form, SettingsFields.LinkLabel),
            PrinterRight = Offset(Changed(form, Right)),
            PrinterDown = Offset(Changed(form, Down)),
        };
        var sentence = await desk.Store.Do(register => SettingsShown.Changed(seen, register.ChangeSettings.Run(correction, seen), register.LookAround.Book()));

        return new Saved(correction.Name is null ? sentence : $"{sentence} The new name is at the top of the screen when the register is opened next.");
    }

    /// <summary>Only what was changed is written: another window may have changed the rest.</summary>
    private static string? Changed(Form form, string label) => form.FieldOf(label) is var field && field.Text.Trim() == field.AsGiven.Trim() ? null : field.Text.Trim();
}
