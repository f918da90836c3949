using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Logbook;

public sealed class SeveralWritersTests : IDisposable
{
    private const string Waiting = "Another program is writing to this register; waiting for it to finish.";

    private readonly TempRegister _register = new();

    public SeveralWritersTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Fact]
    public void Two_programs_and_two_threads_that_write_at_once_lose_nothing_and_give_nothing_twice()
    {
        using var first = AnotherProcess.Start("count", _register.Folder);
        using var second = AnotherProcess.Start("count", _register.Folder);
        Parallel.For(0, 2, _ => AnotherProcess.CountUp(new RegisterStore(_register.Folder, Surroundings.Usual)));
        first.WaitForExit();
        second.WaitForExit();

        var sheet = _register.Store.Read(reader => reader.Work(1)!.Impressions[1]);
        Assert.Equal("", first.StandardError.ReadToEnd() + second.StandardError.ReadToEnd());
        Assert.Equal(4 * AnotherProcess.DeedsEach, sheet.Asking);
        Assert.Equal(Enumerable.Range(1, 4 * AnotherProcess.DeedsEach), sheet.Inscriptions.Select(inscription => inscription.Ordinal));
        Assert.Empty(_register.Findings());
    }

    [Fact]
    public async Task A_deed_waits_while_another_program_writes_and_says_so_once()
    {
        using var other = HoldTheLock();
        var release = Task.Run(async () =>
        {
            await Task.Delay(1_500);
            other.Run("ROLLBACK");
        });

        _register.Store.Write("note", Note);

        await release;
        Assert.Equal([Waiting], _register.Said);
        Assert.Equal("moved to the top drawer", _register.Store.Read(reader => reader.Work(1)!.Note));
    }

    [Fact]
    public void A_deed_gives_up_when_another_program_never_finishes()
    {
        using var other = HoldTheLock();
        LogbookWriter writer = new(_register.Folder.Database, _register.Time, Randomness.System, by: () => null, _register.Said.Add) { Patience = TimeSpan.FromSeconds(2) };

        var refused = Assert.Throws<RefusedException>(() => writer.Write("note", Note));

        Assert.Equal("register-busy", refused.Name);
        Assert.Equal(
            $"Another program has been writing to {_register.Folder.Database} for ten seconds. Nothing was changed. Wait until it has finished, then do this again.",
            refused.Message);
        Assert.Equal([Waiting], _register.Said);
    }

    [Fact]
    public void Reading_and_checking_go_on_while_another_program_writes()
    {
        using var other = HoldTheLock();

        var title = _register.Store.Read(reader => reader.Work(1)!.Title);
        var findings = _register.Findings();

        Assert.Equal("Harbour", title);
        Assert.Empty(findings);
    }

    [Fact]
    public void A_program_killed_in_the_middle_of_a_deed_leaves_all_of_it_or_none()
    {
        Random when = new(5);
        // From before the first entry, over pages already spilled into the write-ahead log, to about the commit.
        var outcomes = Enumerable.Range(0, Depth.Of(5, 10, 50)).Select(round => KilledAfter(when.Next(0, 300) + (round % 5 * 300))).ToList();

        Assert.All(outcomes, added => Assert.Contains(added, new[] { 0L, AnotherProcess.PeopleAtOnce }));
        Assert.Contains(0L, outcomes);
        Assert.Empty(_register.Findings());
        _register.Store.Write("note", Note);
        Assert.Empty(_register.Findings());
    }

    private static bool Note(Writing writing)
    {
        writing.On(Root.Work(1)).Set("work", 1, ("note", "moved to the top drawer"));

        return true;
    }

    /// <returns>How many people the killed program added.</returns>
    private long KilledAfter(int milliseconds)
    {
        var before = People();
        using var writing = AnotherProcess.Start("class", _register.Folder);
        writing.StandardOutput.ReadLine();
        Thread.Sleep(milliseconds);
        writing.Kill();
        writing.WaitForExit();
        Assert.Empty(_register.Findings());

        return People() - before;
    }

    private long People()
    {
        using var connection = SqliteFile.OpenToRead(_register.Folder.Database);

        return connection.Number("SELECT count(*) FROM person");
    }

    private SqliteConnection HoldTheLock()
    {
        var other = SqliteFile.OpenToWrite(_register.Folder.Database);
        other.Run("BEGIN IMMEDIATE");

        return other;
    }
}
