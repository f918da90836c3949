namespace EditionRegister.Cli;

/// <summary>Says which files were written, and what to mind about them.</summary>
internal static class Written
{
    public static void Print(CommandContext context, Printer printer, IEnumerable<string> files, string? mind = null)
    {
        foreach (var file in files)
        {
            printer.Line($"  {context.Shown(file)}");
        }

        if (mind is not null)
        {
            printer.Line(mind);
        }
    }
}
