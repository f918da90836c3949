using System.CommandLine;
using System.Text;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.Cli;

/// <summary>The inventory as it would have been written at the end of a day; its last column says what is now known otherwise.</summary>
internal static class InventoryThen
{
    /// <param name="context">The program.</param>
    /// <param name="line">The line typed.</param>
    /// <param name="day">The day.</param>
    /// <param name="choice">What is listed.</param>
    /// <param name="path">Where to; null prints it.</param>
    public static int Write(CommandContext context, ParseResult line, DateOnly day, InventoryChoice choice, string? path)
    {
        using var then = context.Open(line).LookBack.To(day);

        if (path is null)
        {
            using MemoryStream stream = new();
            then.ExportInventory(choice, stream);
            context.Output.Write(Encoding.UTF8.GetString(stream.ToArray()));

            return ExitCode.Done;
        }

        return context.Record(line, _ =>
        {
            var count = then.ExportInventory(choice, path);

            return new Recorded($"{PapersSaid.Listed(count, context.Shown(path))[..^1]}, as they stood at the end of {ThenShown.Iso(day)}.", json =>
            {
                json.WriteString("file", path);
                json.WriteNumber("impressions", count);
                json.WriteString("as_of", ThenShown.Iso(day));
            });
        });
    }
}
