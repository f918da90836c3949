using EditionRegister.Domain;
using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Passes a refusal on: its sentence to stderr, or its name and sentence as JSON to stdout.</summary>
internal static class RefusalReport
{
    public static int Report(RefusedException refusal, CommandContext context)
    {
        if (context.IsJson)
        {
            context.Printer().Json(json =>
            {
                json.WriteStartObject("refused");
                json.WriteString("name", refusal.Name);
                json.WriteString("message", refusal.Message);
                json.WriteEndObject();
            });
        }

        context.Output.Flush();

        if (!context.IsJson)
        {
            context.Error.WriteLine(SafeText.Show(refusal.Message));
        }

        return ExitCode.Of(refusal);
    }
}
