using System.Text.Json;
using EditionRegister.Domain;

namespace EditionRegister.Cli.Tests;

public sealed class AppTests : IDisposable
{
    private readonly CliRun _cli = new();

    public void Dispose() => _cli.Dispose();

    [Fact]
    public void Prints_a_result_on_stdout_and_nothing_on_stderr()
    {
        var code = _cli.Run("version");

        Assert.Equal(0, code);
        Assert.Equal("edreg 0.1.0\n", _cli.Output.ToString());
        Assert.Equal("", _cli.Error.ToString());
    }

    [Theory]
    [InlineData("version", "--json")]
    [InlineData("--json", "version")]
    [InlineData("--version", "--json")]
    public void Prints_a_result_as_one_JSON_document_wherever_json_is_asked_for(params string[] args)
    {
        var code = _cli.Run(args);

        Assert.Equal(0, code);
        Assert.Equal("{\"format\":\"edreg/1\",\"version\":\"0.1.0\"}\n", _cli.Output.ToString());
    }

    [Fact]
    public void Says_a_refusal_on_stderr()
    {
        _cli.Bring((_, _) => throw new RefusedException("all-numbers-given", "“Harbour” has all 12 of its numbers."));

        var code = _cli.Run("try");

        Assert.Equal(1, code);
        Assert.Equal("", _cli.Output.ToString());
        Assert.Equal("“Harbour” has all 12 of its numbers.\n", _cli.Error.ToString());
    }

    [Fact]
    public void Says_a_refusal_as_JSON_on_stdout_when_asked()
    {
        _cli.Bring((_, _) => throw new RefusedException("all-numbers-given", "“Harbour” has all 12 of its numbers."));

        var code = _cli.Run("try", "--json");

        using var document = JsonDocument.Parse(_cli.Output.ToString());
        Assert.Equal(1, code);
        Assert.Equal("edreg/1", document.RootElement.GetProperty("format").GetString());
        Assert.Equal("all-numbers-given", document.RootElement.GetProperty("refused").GetProperty("name").GetString());
        Assert.Equal("“Harbour” has all 12 of its numbers.", document.RootElement.GetProperty("refused").GetProperty("message").GetString());
        Assert.Equal("", _cli.Error.ToString());
    }

    [Theory]
    [InlineData("register-cannot-open", 3)]
    [InlineData("register-cannot-open-busy", 3)]
    [InlineData("register-newer", 3)]
    [InlineData("register-not-found", 3)]
    [InlineData("register-not-empty", 1)]
    [InlineData("edition-closed", 1)]
    public void Tells_a_register_that_cannot_be_opened_by_its_exit_code(string refusal, int expected)
    {
        _cli.Bring((_, _) => throw new RefusedException(refusal, "No."));

        var code = _cli.Run("try");

        Assert.Equal(expected, code);
    }

    [Theory]
    [InlineData("try")]
    [InlineData("try", "--json")]
    public void Ends_quietly_when_the_user_stops_it(params string[] args)
    {
        _cli.Bring((_, _) => throw new OperationCanceledException());

        var code = _cli.Run(args);

        Assert.Equal(130, code);
        Assert.Equal("", _cli.Output.ToString());
        Assert.Equal("", _cli.Error.ToString());
    }

    [Theory]
    [InlineData(32)]                                       // EPIPE: errno.h of Linux and macOS
    [InlineData(unchecked((int)0x8007006D))]               // ERROR_BROKEN_PIPE: winerror.h
    [InlineData(unchecked((int)0x800700E8))]               // ERROR_NO_DATA: winerror.h
    public void Ends_quietly_when_nobody_reads_on(int systemError)
    {
        _cli.Bring((_, _) => throw new IOException("Broken pipe", systemError));

        var code = _cli.Run("try");

        Assert.Equal(0, code);
        Assert.Equal("", _cli.Error.ToString());
    }

    [Theory]
    [InlineData(28)]                                       // ENOSPC: errno.h of Linux and macOS
    [InlineData(unchecked((int)0x80070070))]               // ERROR_DISK_FULL: winerror.h
    public void Says_so_when_no_space_is_left(int systemError)
    {
        _cli.Bring((_, _) => throw new IOException("No space left on device", systemError));

        var code = _cli.Run("try");

        Assert.Equal(1, code);
        Assert.Equal("Not everything was written: no space is left on the disk. Make room and do it again.\n", _cli.Error.ToString());
    }

    [Fact]
    public void Shows_the_help_when_nothing_is_asked_and_nobody_watches()
    {
        var code = _cli.Run();
        var (unasked, said) = (_cli.Output.ToString(), _cli.Error.ToString());
        _cli.Run("--help");

        Assert.Equal(2, code);
        Assert.Equal("There is no terminal here to show the register on. Every job is also a command:\n", said);
        Assert.Equal(_cli.Output.ToString(), unasked);
        Assert.StartsWith("Keeps a true register of numbered hand-printed sheets.\n", unasked, StringComparison.Ordinal);
    }

    [Fact]
    public void Takes_the_person_from_the_command_line()
    {
        long? by = null;
        _cli.Bring((context, line) => (by = context.By(line)) is null ? 1 : 0);

        var code = _cli.Run("try", "--by", "2");

        Assert.Equal(0, code);
        Assert.Equal(2, by);
    }
}
