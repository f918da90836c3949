using EditionRegister.Domain.Sizes;
using System.CommandLine;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Store;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Cli;

/// <summary><c>edreg new</c>: makes an empty register.</summary>
internal static class NewCommand
{
    private static readonly string[] Pages = [.. PageSize.All.Select(page => page.Word)];

    public static Command Create(CommandContext context)
    {
        var folder = Arg.Text("FOLDER", "The folder of the new register. It is made where it is not there.");
        var name = Opt.Text("--name", "NAME", "What the register is called, on screens and lists. Else the name of the folder.");
        var url = SettingsOptions.BaseUrl("Put before /CODE in the links that QR codes hold. Without it no QR codes are printed.");
        Option<string?> currency = new("--currency") { HelpName = "CODE", Description = "Used where a price names no currency, in three letters. Else EUR.", CustomParser = Given.One<string?>(CurrencyOption.TryRead!, CurrencyOption.Form) };
        var page = Opt.Word("--page", Pages, "Paper for certificates and lists. Else A4.");
        var units = Opt.Word("--units", ["mm", "in"], "How sizes are shown on documents. Else mm.");
        var writing = SettingsOptions.SizeWriting("How sizes are written for people. Else measured.");
        CommandWithExample command = new("new", "Makes an empty register in a folder of its own.", "edreg new studio --name \"Studio Tolland\" --currency EUR") { folder, name, url, currency, page, units, writing };

        command.SetAction(line => Make(context, line.GetRequiredValue(folder), path => new RegisterSettings
        {
            Name = line.GetValue(name) ?? Path.GetFileName(path),
            BaseUrl = line.GetValue(url)?.TrimEnd('/'),
            Currency = line.GetValue(currency) ?? "EUR",
            Page = PageSize.Of(line.GetValue(page)) ?? PageSize.A4,
            Units = line.GetValue(units) ?? "mm",
            SizeWriting = SizeWriting.Of(line.GetValue(writing)) ?? SizeWriting.Measured,
        }));

        return command;
    }

    private static int Make(CommandContext context, string folder, Func<string, RegisterSettings> settingsOf)
    {
        var path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder, context.Services.CurrentDirectory));
        var settings = settingsOf(path);

        try
        {
            new MakeRegister(context.Surroundings()).Run(new RegisterFolder(path), settings);
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException || (failure is IOException full && !WriteFailure.IsNoSpace(full)))
        {
            throw RegisterRefusals.CannotMake(path, failure.Message);
        }

        Recorded made = new($"Register “{settings.Name}” made in {context.Shown(path)}.", json =>
        {
            json.WriteString("folder", path);
            json.WriteString("name", settings.Name);
        });
        made.Print(context.Printer(), "new");

        return ExitCode.Done;
    }
}
