using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Tests.Hall;

/// <summary>Long looks beside the queue.</summary>
public sealed class AsideTests : IAsyncDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("edreg-aside-");
    private readonly StoreQueue _store;

    public AsideTests() => _store = new StoreQueue(
        new MakeRegister(Surroundings.Usual).Run(new RegisterFolder(Path.Combine(_folder.FullName, "register")), new RegisterSettings { Name = "Test studio" }), run => run());

    public async ValueTask DisposeAsync()
    {
        await _store.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public async Task The_queue_goes_on_while_somebody_looks_long()
    {
        using ManualResetEventSlim enough = new();
        var looking = _store.Aside((register, _, _) =>
        {
            enough.Wait(TestContext.Current.CancellationToken);
            return register.LookAround.Head().N;
        });

        var place = await _store.Do(register => register.RecordPlace.Run("Studio"));
        Assert.False(looking.IsCompleted);
        enough.Set();

        Assert.Equal(1, place);
        Assert.Equal(2, await looking);
    }

    [Fact]
    public async Task A_refusal_is_met_by_the_one_who_looks()
    {
        var looking = _store.Aside((register, _, _) => register.LookAround.Work(7));

        var refused = await Assert.ThrowsAsync<RefusedException>(() => looking);

        Assert.Equal("work-not-found", refused.Name);
    }

    [Fact]
    public async Task Closing_the_register_stops_a_long_look()
    {
        var looking = _store.Aside((_, tell, _) =>
        {
            while (true)
            {
                tell(() => { });
                Thread.Sleep(1);
            }

#pragma warning disable CS0162 // The compiler asks for a result of what never ends.
            return 0;
#pragma warning restore CS0162
        });

        await _store.DisposeAsync();

        await Assert.ThrowsAsync<OperationCanceledException>(() => looking);
    }

    [Fact]
    public async Task How_far_it_has_come_is_told_ten_times_a_second_at_most()
    {
        var told = 0;
        var from = Environment.TickCount64;

        await _store.Aside((_, tell, _) =>
        {
            while (Environment.TickCount64 - from < 350)
            {
                tell(() => told++);
            }

            return true;
        });

        Assert.InRange(told, 1, 3);
    }
}
