using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Tests.Logbook;

public sealed class LogbookWriterTests : IDisposable
{
    private readonly TempRegister _register = new();

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_new_register_has_one_entry_and_nothing_to_find()
    {
        var findings = _register.Findings();

        Assert.Empty(findings);
        Assert.Equal(1, _register.Store.Read(reader => reader.Head.N));
    }

    [Fact]
    public void A_deed_over_two_roots_writes_two_entries_under_one_batch()
    {
        _register.Store.Write("note", writing =>
        {
            foreach (var (id, name) in new[] { (1L, "Quay Gallery"), (2L, "Mira Tolland") })
            {
                writing.On(Root.Person(id)).Set(
                    "person", id, ("what", "person"), ("name", name), ("protected", "no"), ("public_name", "full"), ("erased", "no"));
            }

            return true;
        });

        var newest = _register.Store.Read(reader => reader.NewestEntries(3));
        Assert.Equal(["person/2", "person/1", "batch/1"], newest.Select(line => line.Root));
        Assert.All(newest, line => Assert.Equal(1, line.Batch));
        Assert.Empty(_register.Findings());
    }
}
