using EditionRegister.Domain.Facts;
using EditionRegister.Store.Reading;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.UseCases.Tests.Looking;

public sealed class LogbookProofTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;

    public LogbookProofTests() => _demo = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_sound_logbook_is_proved_to_its_head()
    {
        List<(long, long)> told = [];

        var proof = _demo.LookAround.Unbroken((done, all) => told.Add((done, all)));

        Assert.Equal(new LogbookProof(_demo.LookAround.Head().N, _demo.LookAround.Head(), null, null), proof);
        Assert.Equal((proof.Entries, proof.Entries), told[^1]);
    }

    [Theory]
    [InlineData("UPDATE logbook SET body = CAST(replace(CAST(body AS TEXT), 'kept', 'kepT') AS BLOB) WHERE n = 12", 12, "is not the text its leaf hash was made of")]
    [InlineData("UPDATE logbook SET body = x'7b7d' WHERE n = 5", 5, "is not the text its leaf hash was made of")]
    [InlineData("UPDATE logbook SET head = leaf WHERE n = 7", 7, "has a head that is not the hash of the entries up to it")]
    [InlineData("DELETE FROM logbook WHERE n = 9", 9, "is missing")]
    [InlineData("DELETE FROM logbook WHERE n = 1", 1, "is missing")]
    [InlineData("DELETE FROM logbook WHERE n > 20", 21, "is missing at the end, or the hash tree kept for the next entry was changed")]
    public void The_first_entry_that_does_not_fit_is_named(string sql, long n, string how)
    {
        if (n == 12)
        {
            n = _demo.LookAround.Logbook(int.MaxValue).Last(line => line.Body.Contains("kept", StringComparison.Ordinal)).N;
            sql = sql.Replace("12", n.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        }

        Tampering.Break(_demo.Folder, sql);

        var proof = _demo.LookAround.Unbroken();

        Assert.Equal((n, how, n - 1), (proof.BrokenAt, proof.How, proof.Entries));
        Assert.False(proof.IsUnbroken);
    }

    [Fact]
    public void Proving_can_be_stopped()
    {
        RegisterStore store = new(_demo.Folder, Surroundings.Usual);
        store.Write("furnish", writing => Enumerable.Range(1, 1_000).Sum(i => Named(writing.On(Root.Place(1_000 + i)), 1_000 + i)));
        using CancellationTokenSource enough = new();
        enough.Cancel();

        Assert.Throws<OperationCanceledException>(() => _demo.LookAround.Unbroken(cancelled: enough.Token));
    }

    private static long Named(Deed deed, long place)
    {
        deed.Set("place", place, ("name", "Shelf"));

        return place;
    }
}
