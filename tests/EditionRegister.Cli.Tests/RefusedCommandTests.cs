namespace EditionRegister.Cli.Tests;

public sealed class RefusedCommandTests : IDisposable
{
    private readonly CliRun _cli = new();

    public RefusedCommandTests()
    {
        _cli.Run("new", "studio");
        _cli.Set("EDREG_REGISTER", Path.Combine(_cli.Folder, "studio"));
    }

    public void Dispose() => _cli.Dispose();

    [Theory]
    [InlineData("number 1 --sheets BFRN-V97A")]
    [InlineData("number 1 --as 2 --sheets BFRN-V97A")]
    [InlineData("number 1 --as 1-2 --sheets RZSH-4EWR,BFRN-V97A")]
    public void Gives_a_sheet_no_number_of_another_work(string line)
    {
        foreach (var before in new[] { "work add --title Harbour --maker-unknown", "work add --title Heron --maker-unknown", "run add 1 --pile 2", "run add 2 --pile 2", "sort kept --work 1 --pile 1-2", "sort kept --work 2 --pile 1-2", "declare 1 --numbering 1-2" })
        {
            Assert.Equal(0, _cli.Run(before.Split(' ')));
        }

        var said = _cli.Typed($"edreg {line}");

        Assert.Equal("BFRN-V97A is a sheet of “Heron”, so it can bear no number of “Harbour”. Nothing was changed. Name the edition of its own work, or look whether it is another sheet.\n[1]\n", said);
    }

    [Fact]
    public void Takes_no_deed_from_somebody_unknown()
    {
        var said = _cli.Typed("edreg place add Studio --by 7");

        Assert.Equal("Nobody called “7” is in the address book. Nothing was changed. Record them first with `edreg person add`, or name them by their number.\n[1]\n", said);
    }

    [Fact]
    public void Makes_no_register_where_nothing_can_be_written()
    {
        File.WriteAllText(Path.Combine(_cli.Folder, "list.txt"), "");

        var said = _cli.Typed("edreg new list.txt/studio");

        Assert.StartsWith("No register was made: /home/mira/list.txt/studio cannot be written (", said, StringComparison.Ordinal);
        Assert.EndsWith("). Name a folder of your own.\n[1]\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Asks_which_matrix_is_meant()
    {
        _cli.Run("work", "add", "--title", "Harbour", "--maker-unknown");
        _cli.Run("matrix", "add", "1", "--what", "plate");
        _cli.Run("matrix", "add", "1", "--what", "plate");

        var said = _cli.Typed("edreg matrix fate 1 lost");

        Assert.Equal("“Harbour” has 2 matrices, and it was not said which is meant. Nothing was changed. Name it with --matrix; `edreg work show 1` shows their numbers.\n[1]\n", said);
    }
}
