using EditionRegister.Store;
using EditionRegister.UseCases;

namespace EditionRegister.EndToEnd.Tests;

public sealed class TwoProgramsTests : IDisposable
{
    private readonly RealProgram _edreg = new();

    public void Dispose() => _edreg.Dispose();

    [Fact]
    public void Two_programs_numbering_at_once_give_no_number_twice_and_lose_none()
    {
        _edreg.Do("new", "studio");
        _edreg.Do("person", "add", "Mira Tolland", "--register", "studio");
        _edreg.Do("work", "add", "--title", "Harbour", "--maker", "Mira Tolland", "--register", "studio");
        _edreg.Do("run", "add", "1", "--started", "16", "--register", "studio");
        _edreg.Do("sort", "kept", "--work", "1", "--pile", "1-16", "--register", "studio");
        _edreg.Do("declare", "1", "--numbering", "1-16", "--register", "studio");

        // Sixteen programs, two of them always at once, each numbers one sheet with the next open number.
        var runs = Enumerable.Range(1, 16).Chunk(2).SelectMany(pair =>
        {
            var processes = pair.Select(sheet => _edreg.Start("number", "1", "--work", "1", "--pile", FormattableString.Invariant($"{sheet}"), "--register", "studio")).ToList();

            return processes.Select(RealProgram.Finish).ToList();
        }).ToList();

        Assert.All(runs, ran => Assert.Equal((0, ""), (ran.ExitCode, ran.Errors)));
        var register = Register.Open(new RegisterFolder(_edreg.In("studio")));
        Assert.Equal(Enumerable.Range(1, 16), register.LookAround.Work(1).Impressions.Select(sheet => sheet.Number!.Value).Order());
        Assert.Empty(register.CheckRegister.Run());
    }
}
