using System.Security.Cryptography;

namespace EditionRegister.Store;

/// <summary>Where codes and salts come from: the system's own source, or a seeded one where the same run must give the same register.</summary>
public abstract class Randomness
{
    public static Randomness System { get; } = new SystemRandomness();

    /// <summary>Another source of the same kind: what is drawn from it leaves this one as it was.</summary>
    public virtual Randomness Beside => this;

    public abstract void Fill(Span<byte> bytes);

    /// <summary>A whole number from 0 to <paramref name="bound"/> - 1.</summary>
    public abstract int Below(int bound);

    private sealed class SystemRandomness : Randomness
    {
        public override void Fill(Span<byte> bytes) => RandomNumberGenerator.Fill(bytes);

        public override int Below(int bound) => RandomNumberGenerator.GetInt32(bound);
    }
}

/// <summary>The same stream of bytes for the same seed (SHA-256 of seed and counter). For the demo and for tests only.</summary>
public sealed class SeededRandomness(string seed) : Randomness
{
    private long _block;
    private SeededRandomness? _beside;

    public override Randomness Beside => _beside ??= new SeededRandomness(seed + "/beside");

    public override void Fill(Span<byte> bytes)
    {
        while (!bytes.IsEmpty)
        {
            var block = SHA256.HashData(global::System.Text.Encoding.UTF8.GetBytes(FormattableString.Invariant($"{seed}/{_block++}")));
            var take = Math.Min(block.Length, bytes.Length);
            block.AsSpan(0, take).CopyTo(bytes);
            bytes = bytes[take..];
        }
    }

    public override int Below(int bound)
    {
        Span<byte> bytes = stackalloc byte[8];
        Fill(bytes);

        return (int)(global::System.Buffers.Binary.BinaryPrimitives.ReadUInt64LittleEndian(bytes) % (ulong)bound);
    }
}
