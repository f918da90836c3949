using System.CommandLine;
using System.Text.Json;
using EditionRegister.Domain;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Cli;

/// <summary><c>edreg settings</c>: shows and changes what register.toml says.</summary>
internal static class SettingsCommand
{
    public static Command Create(CommandContext context)
    {
        SettingsOptions options = new();
        CommandWithExample command = new("settings", "Shows the register's settings, and changes those that are named.", "edreg settings --writer \"Mira Tolland\" --currency EUR");
        options.AddTo(command);

        command.SetAction(line =>
        {
            var correction = options.Read(line);

            return correction == new SettingsCorrection() ? context.Look(line, Show) : context.Record(line, register =>
            {
                var before = register.Settings;
                var after = register.ChangeSettings.Run(correction);

                return new Recorded(SettingsShown.Changed(before, after, register.LookAround.Book()), json => Write(json, after));
            });
        });

        return command;
    }

    private static void Show(UseCases.Register register, Printer printer)
    {
        var settings = register.Settings;
        printer.Show(
            text: () => printer.Facts([.. SettingsShown.Facts(settings, register.LookAround.Book()).Select(fact => (fact.Label, (string?)fact.Value))]),
            json: json => Write(json, settings));
    }

    private static void Write(Utf8JsonWriter json, RegisterSettings settings)
    {
        json.WriteString("name", settings.Name);
        json.WriteString("base_url", settings.BaseUrl);
        json.WriteString("page", settings.Page.Word);
        json.WriteString("currency", settings.Currency);
        json.WriteString("units", settings.Units);
        json.WriteString("size_writing", settings.SizeWriting.Word);
        json.Whole("writer", settings.By);
        json.WriteNumber("printer_right_mm", settings.PrinterOffset.Right);
        json.WriteNumber("printer_down_mm", settings.PrinterOffset.Down);
    }
}
