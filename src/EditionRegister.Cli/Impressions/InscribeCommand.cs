using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary><c>edreg inscribe</c>: records what stands on sheets.</summary>
internal static class InscribeCommand
{
    public static Command Create(CommandContext context)
    {
        ChooserOptions chooser = new();
        InscriptionOptions options = new();
        CommandWithExample command = new("inscribe", "Records what stands on sheets: number, title, signature and inscriptions, as written.", "edreg inscribe --edition 3 --sheets \"1-12, A/P I-II\" --as-spelled --signed yes --signature \"M. Tolland\"");
        chooser.AddTo(command);
        options.AddTo(command);

        command.SetAction(line => context.Record(line, register =>
        {
            var sheets = register.InscribeImpressions.Run(chooser.Read(line), options.Read(line));

            return new Recorded(SheetSaid.Inscribed(sheets), json => json.WriteNumber("sheets", sheets));
        }));

        return command;
    }
}
