using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Logbook;

public sealed class WritingTests : IDisposable
{
    private readonly TempRegister _register = new();

    public WritingTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_row_changed_since_it_was_seen_is_refused_with_both_values()
    {
        var seen = Seen();
        Price(20_000, seen);

        var refused = Assert.Throws<RefusedException>(() => Price(25_000, seen));

        Assert.Equal("changed-meanwhile", refused.Name);
        Assert.Equal(
            "Someone changed this while you were looking at it: asking is now “20000”, you wanted “25000”. Nothing was changed. Look at it as it stands and do this again.",
            refused.Message);
        Assert.Equal(20_000, _register.Store.Read(reader => reader.Work(1)!.Impressions[1].Asking));
    }

    [Fact]
    public void A_value_that_is_blank_by_now_is_said_to_be_nothing()
    {
        var seen = Seen();
        Price(null, seen);

        var refused = Assert.Throws<RefusedException>(() => Price(25_000, seen));

        Assert.StartsWith("Someone changed this while you were looking at it: asking is now “nothing”, you wanted “25000”.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_taken_away_since_it_was_seen_is_refused()
    {
        _register.Store.Write("drop-role", writing =>
        {
            writing.On(Root.Work(1)).Unset("work_role", 1);

            return true;
        });

        var refused = Assert.Throws<RefusedException>(() => _register.Store.Write("order", writing =>
        {
            writing.StillAsSeen("work_role", 1, seen: 2, "ordinal", 2);

            return true;
        }));

        Assert.Equal(
            "Someone took this away while you were looking at it; you wanted ordinal to be “2”. Nothing was changed. Look at it as it stands and do this again.",
            refused.Message);
    }

    [Fact]
    public void A_row_that_stands_as_it_was_seen_may_be_changed_and_so_may_one_nobody_looked_at()
    {
        Price(20_000, Seen());
        Price(25_000, seen: null);

        Assert.Equal(25_000, _register.Store.Read(reader => reader.Work(1)!.Impressions[1].Asking));
    }

    [Fact]
    public void An_id_that_was_undone_is_never_given_to_another_row()
    {
        var first = Inscribe();
        _register.Store.Write("undo", writing =>
        {
            writing.On(Root.Work(1)).Unset("inscription", first);

            return true;
        });

        var second = Inscribe();

        Assert.Equal(first + 1, second);
        Assert.Empty(_register.Findings());
    }

    [Fact]
    public void What_a_deed_that_is_refused_had_set_is_not_there_afterwards()
    {
        var before = Dump.Of(_register.Folder.Database);

        Assert.Throws<RefusedException>(() => _register.Store.Write("sort", Refuse));

        Assert.Equal(before, Dump.Of(_register.Folder.Database));
    }

    [Fact]
    public void A_deed_that_sets_nothing_writes_no_entry()
    {
        var before = _register.Store.Read(reader => reader.Head);

        var answer = _register.Store.Write("look", writing => writing.Read.Work(1)!.Title);

        Assert.Equal("Harbour", answer);
        Assert.Equal(before, _register.Store.Read(reader => reader.Head));
    }

    private static bool Refuse(Writing writing)
    {
        writing.On(Root.Work(1)).Set("impression", 3, ("standing", "kept"));

        throw new RefusedException("no", "Nothing was changed.");
    }

    private long Seen() => _register.Store.Read(reader => reader.Work(1)!.Impressions[1].V);

    private void Price(long? asking, long? seen) => _register.Store.Write("price", writing =>
    {
        writing.StillAsSeen("impression", 2, seen, "asking", asking);
        writing.On(Root.Work(1)).Set("impression", 2, ("asking", asking), ("asking_currency", asking is null ? null : "EUR"));

        return true;
    });

    private long Inscribe() => _register.Store.Write("inscribe", writing =>
    {
        var deed = writing.On(Root.Work(1));
        var id = deed.NewId("inscription");
        deed.Set("inscription", id, ("impression", 1), ("ordinal", 2), ("side", "back"), ("manner", "written"), ("text", "for M."));

        return id;
    });
}
