using EditionRegister.Domain.Sizes;
using System.Globalization;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Toml;

namespace EditionRegister.Formats.Settings;

/// <summary>The settings of a register as the file <c>register.toml</c>, which a person may edit.</summary>
public static class RegisterToml
{
    private static readonly string[] Keys = ["name", "base_url", "page", "currency", "units", "size_writing", "by", "printer.right_mm", "printer.down_mm"];

    /// <exception cref="RefusedException">Told with file, line, column and what is right.</exception>
    public static RegisterSettings Read(string text, string fileName)
    {
        var toml = TomlText.Parse(text, fileName, Keys);

        return new RegisterSettings
        {
            Name = NameIn(toml),
            BaseUrl = BaseUrlIn(toml),
            Page = toml.Text("page") is not { } page ? PageSize.A4 : PageSize.Of(page) ?? throw toml.Wrong("page", "must be \"A4\" or \"Letter\""),
            Currency = CurrencyIn(toml),
            Units = toml.Text("units") switch { null or "mm" => "mm", "in" => "in", _ => throw toml.Wrong("units", "must be \"mm\" or \"in\"") },
            SizeWriting = WritingIn(toml),
            By = toml.Whole("by") is < 1 ? throw toml.Wrong("by", "must be the id of a person, 1 or more") : toml.Whole("by"),
            PrinterOffset = new PrinterOffset(OffsetIn(toml, "printer.right_mm"), OffsetIn(toml, "printer.down_mm")),
        };
    }

    /// <summary>Every key with a comment that says what it does; what is not set stands commented out.</summary>
    public static string Write(RegisterSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);

        return string.Create(CultureInfo.InvariantCulture, $"""
            # What this register is called, on screens and lists.
            name = {TomlString.Quote(settings.Name)}

            # Put before /code in the links that QR codes hold. Without it no QR codes are printed.
            {OrComment("base_url", settings.BaseUrl is { } url ? TomlString.Quote(url) : null, "\"https://example.org/prints\"")}

            # Paper for certificates and lists: "A4" or "Letter".
            page = {TomlString.Quote(settings.Page.Word)}

            # Used where a price names no currency: three capital letters of ISO 4217.
            currency = {TomlString.Quote(settings.Currency)}

            # How sizes are shown on documents: "mm" or "in".
            units = {TomlString.Quote(settings.Units)}

            # How sizes are written for people: "measured" (in that unit, nothing rounded), "cco" (cm with decimals, and inches to the nearest
            # quarter), "lc" (up to the next cm, and inches up to the next quarter) or "lc-mm" (nearest mm, and inches up to the next eighth).
            size_writing = {TomlString.Quote(settings.SizeWriting.Word)}

            # The id of the person who writes in this register.
            {OrComment("by", settings.By?.ToString(CultureInfo.InvariantCulture), "1")}

            # What the label printer gets wrong: labels are moved by so many millimetres.
            [printer]
            # To the right; negative moves to the left.
            right_mm = {settings.PrinterOffset.Right}
            # Down; negative moves up.
            down_mm = {settings.PrinterOffset.Down}

            """).ReplaceLineEndings("\n");
    }

    private static string OrComment(string key, string? value, string example) =>
        value is null ? $"# {key} = {example}" : $"{key} = {value}";

    private static string NameIn(TomlText toml)
    {
        var name = toml.Text("name") ?? throw toml.Missing("name");
        return string.IsNullOrWhiteSpace(name) ? throw toml.Wrong("name", "must not be empty") : name;
    }

    private static string CurrencyIn(TomlText toml)
    {
        var currency = toml.Text("currency") ?? "EUR";
        return currency.Length == 3 && currency.All(char.IsAsciiLetterUpper)
            ? currency
            : throw toml.Wrong("currency", "must be three capital letters, such as \"EUR\"");
    }

    private static SizeWriting WritingIn(TomlText toml) => toml.Text("size_writing") is not { } word ? SizeWriting.Measured
        : SizeWriting.All.FirstOrDefault(writing => writing.Word == word) ?? throw toml.Wrong("size_writing", "must be \"measured\", \"cco\", \"lc\" or \"lc-mm\"");

    private static string? BaseUrlIn(TomlText toml)
    {
        if (toml.Text("base_url") is not { } url)
        {
            return null;
        }

        return LinkAddress.IsOne(url) ? url.TrimEnd('/') : throw toml.Wrong("base_url", "must be a whole address such as \"https://example.org/prints\", without ? and #");
    }

    private static double OffsetIn(TomlText toml, string key)
    {
        var offset = toml.Number(key) ?? 0;
        return Math.Abs(offset) <= PrinterOffset.Most ? offset : throw toml.Wrong(key, "must lie between -20 and 20 millimetres");
    }
}
