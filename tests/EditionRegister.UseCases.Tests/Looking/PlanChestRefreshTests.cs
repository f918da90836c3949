using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>After every deed of another program the chest is the one somebody sees who leafs through all works anew.</summary>
public sealed class PlanChestRefreshTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;

    public PlanChestRefreshTests() => _demo = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_another_program_wrote_is_taken_up_and_what_was_found_before_stays_as_it_was()
    {
        var chest = _demo.ReadChest();
        var before = chest.Find(null);
        var lines = before.ToList();
        Assert.False(chest.Refresh());

        SomeDeeds.DoAll(Register.Open(_demo.Folder));

        Assert.True(chest.Refresh());
        Same(chest);
        Assert.Equal(lines, before);
        Assert.False(chest.Refresh());
    }

    [Fact]
    public void Each_single_deed_is_taken_up()
    {
        var chest = _demo.ReadChest();
        var other = Register.Open(_demo.Folder);

        foreach (var deed in SomeDeeds.Of(other))
        {
            deed();

            Assert.True(chest.Refresh());
            Same(chest);
        }
    }

    [Fact]
    public void A_file_of_many_works_read_in_and_undone_is_taken_up()
    {
        var chest = _demo.ReadChest();
        var before = chest.Find(null).ToList();
        var list = _folder.In("list.csv");
        File.WriteAllText(list, "title,maker,number\n" + string.Concat(Enumerable.Range(1, 600).Select(i => FormattableString.Invariant($"Net {i},Ada Voe,1/3\n"))));

        var batch = _demo.ReadIn.Run(list, []).Batch!.Value;
        Assert.True(chest.Refresh());
        Same(chest);
        Assert.Equal(600, chest.Find("net voe").Count);

        _demo.UndoBatch.Run(batch);
        Assert.True(chest.Refresh());
        Assert.Equal(before, chest.Find(null));
    }

    [Fact]
    public void A_file_put_in_the_place_of_another_is_read_anew()
    {
        var kept = _folder.In("kept.db");
        File.Copy(_demo.Folder.Database, kept);
        _demo.EditWork.Run(1, "One way", null, null);
        var chest = _demo.ReadChest();

        File.Copy(kept, _demo.Folder.Database, overwrite: true);
        _demo.EditWork.Run(1, "Another way", null, null);

        Assert.True(chest.Refresh());
        Assert.Single(chest.Find("another way"));
        Assert.Empty(chest.Find("one way"));
    }

    [Fact]
    public async Task Any_thread_may_look_while_another_reads()
    {
        var chest = _demo.ReadChest();
        using CancellationTokenSource enough = new();
        var looking = Task.Run(() =>
        {
            var looks = 0;

            for (; !enough.IsCancellationRequested; looks++)
            {
                Assert.NotEmpty(chest.Find("tolland harb"));
            }

            return looks;
        });

        for (var i = 0; i < 20; i++)
        {
            _demo.EditWork.Run(2, FormattableString.Invariant($"Title {i}"), null, null);
            chest.Refresh();
        }

        await enough.CancelAsync();
        Assert.True(await looking > 0);
    }

    /// <summary>As a chest that is opened now.</summary>
    private void Same(PlanChest chest)
    {
        LeafedThrough leafed = new(_demo);
        TypedWords typed = new(leafed.Bits, seed: 2);
        Assert.Equal(leafed.Find(""), chest.Find(""));

        for (var i = 0; i < 40; i++)
        {
            var text = typed.Next();

            Assert.True(leafed.Find(text).SequenceEqual(chest.Find(text)), text);
        }
    }
}
