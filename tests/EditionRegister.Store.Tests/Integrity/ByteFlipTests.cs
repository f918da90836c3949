using EditionRegister.Domain;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

public sealed class ByteFlipTests : IDisposable
{
    private readonly TamperedFile _file = new();

    public void Dispose() => _file.Dispose();

    [Fact]
    public void A_flipped_bit_anywhere_in_the_file_is_never_thrown_and_always_found_where_it_changes_what_the_file_says()
    {
        _file.Reset();
        var whole = File.ReadAllBytes(_file.Database);
        var said = Dump.Of(_file.Database);
        Draw draw = new("flips");
        List<string> missed = [];
        var changed = 0;

        for (var flips = Depth.Of(300, 2_000, 30_000); flips > 0; flips--)
        {
            var (at, bit) = (draw.Below(whole.Length), draw.Below(8));
            _file.Reset();
            WriteFlipped(whole, at, bit);
            var found = IsFound();

            if (Said() != said)
            {
                changed++;

                if (!found)
                {
                    missed.Add($"byte {at}, bit {bit}");
                }
            }
        }

        Assert.Empty(missed);
        Assert.True(changed > 50, $"Only {changed} flips changed anything.");
    }

    private void WriteFlipped(byte[] whole, int at, int bit)
    {
        var bytes = (byte[])whole.Clone();
        bytes[at] ^= (byte)(1 << bit);
        File.WriteAllBytes(_file.Database, bytes);
    }

    private bool IsFound()
    {
        try
        {
            return _file.Findings().Count > 0;
        }
        catch (RefusedException)
        {
            return true;
        }
    }

    /// <summary>What the file says, or null where it cannot be read to the end.</summary>
    private string? Said()
    {
        try
        {
            return Dump.Of(_file.Database);
        }
        catch (SqliteException)
        {
            return null;
        }
    }
}
