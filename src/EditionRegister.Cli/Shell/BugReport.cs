using EditionRegister.Domain.Text;

namespace EditionRegister.Cli;

/// <summary>Owns up to a mistake of the program's own: one sentence to the user, the trace to a log.</summary>
internal static class BugReport
{
    public static int Report(Exception exception, CommandContext context)
    {
        context.Error.WriteLine(OwnUp(exception, context.KnownRegister, context.Services.Time));

        return ExitCode.Bug;
    }

    /// <summary>Writes the trace away, and answers the sentence.</summary>
    public static string OwnUp(Exception exception, string? registerFolder, TimeProvider time)
    {
        var log = TraceLog.Write(exception, registerFolder, time);
        var where = log is null ? "No trace could be written." : $"The trace is in {log}.";
        var what = SafeText.Show($"{exception.GetType().Name}, {exception.Message.TrimEnd('.')}");

        return $"This is a bug in edreg: {what}. {where}";
    }
}
