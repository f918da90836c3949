using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Owns up to a mistake of the program's own: one sentence to the user, the trace to a log.</summary>
internal static class BugReport
{
    public static int Report(Exception exception, CommandContext context)
    {
        var log = TraceLog.Write(exception, context.KnownRegister, context.Services.Time);
        var where = log is null ? "No trace could be written." : $"The trace is in {log}.";
        var what = SafeText.Show($"{exception.GetType().Name}, {exception.Message.TrimEnd('.')}");

        context.Error.WriteLine($"This is a bug in edreg: {what}. {where}");

        return ExitCode.Bug;
    }
}
