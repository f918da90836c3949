namespace EditionRegister.Cli.Tests;

public sealed class BugReportTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Owns_up_in_one_sentence_and_puts_the_trace_into_the_registers_log()
    {
        var register = _cli.MakeRegister("studio");
        _cli.Bring((context, line) => throw new InvalidOperationException($"No sheet in {Path.GetFileName(context.RegisterFolder(line))}."));

        var code = _cli.Run("try", "--register", "studio");

        var log = Path.Combine(register, "log.txt");
        Assert.Equal(70, code);
        Assert.Equal("", _cli.Output.ToString());
        Assert.Equal($"This is a bug in edreg: InvalidOperationException, No sheet in studio. The trace is in {log}.\n", _cli.Error.ToString());
        Assert.StartsWith("2026-03-01T10:00:00.000Z edreg 0.1.0\nSystem.InvalidOperationException: No sheet in studio.\n   at ", File.ReadAllText(log).ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void Keeps_the_traces_before()
    {
        var register = _cli.MakeRegister("studio");
        File.WriteAllText(Path.Combine(register, "log.txt"), "before\n");
        _cli.Bring((context, line) => throw new InvalidOperationException(context.RegisterFolder(line)));

        _cli.Run("try", "--register", "studio");
        _cli.Run("try", "--register", "studio");

        var log = File.ReadAllText(Path.Combine(register, "log.txt"));
        Assert.StartsWith("before\n2026", log, StringComparison.Ordinal);
        Assert.Equal(2, log.Split("edreg 0.1.0\n").Length - 1);
    }

    [Fact]
    public void Makes_a_log_of_the_owners_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no file modes.");
            return;
        }

        var register = _cli.MakeRegister("studio");
        _cli.Bring((context, line) => throw new InvalidOperationException(context.RegisterFolder(line)));

        _cli.Run("try", "--register", "studio");

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(register, "log.txt")));
    }

    [Fact]
    public void Names_a_temporary_log_while_no_register_is_known()
    {
        _cli.Bring((_, _) => throw new InvalidOperationException("No sheet\nat all."));

        var code = _cli.Run("try");

        var error = _cli.Error.ToString();
        const string before = "This is a bug in edreg: InvalidOperationException, No sheet␊at all. The trace is in ";
        Assert.Equal(70, code);
        Assert.StartsWith(before, error, StringComparison.Ordinal);
        var log = error[before.Length..^2];
        Assert.Contains("System.InvalidOperationException: No sheet", File.ReadAllText(log), StringComparison.Ordinal);
        Directory.Delete(Path.GetDirectoryName(log)!, recursive: true);
    }

    [Fact]
    public void Falls_back_to_a_temporary_log_where_the_registers_cannot_be_written()
    {
        var register = _cli.MakeRegister("studio");
        Directory.CreateDirectory(Path.Combine(register, "log.txt"));
        _cli.Bring((context, line) => throw new InvalidOperationException(context.RegisterFolder(line)));

        _cli.Run("try", "--register", "studio");

        var log = _cli.Error.ToString().Split("The trace is in ")[1][..^2];
        Assert.False(log.StartsWith(register, StringComparison.Ordinal));
        Assert.True(File.Exists(log));
        Directory.Delete(Path.GetDirectoryName(log)!, recursive: true);
    }
}
