using System.Buffers;
using System.Security.Cryptography;

namespace EditionRegister.Store.Proof;

/// <summary>The hashes of RFC 6962 (2.1): a leaf and a node are told apart by the byte before them.</summary>
public static class MerkleTree
{
    /// <summary>Bytes of a SHA-256 hash.</summary>
    public const int HashLength = SHA256.HashSizeInBytes;

    /// <summary>SHA-256(0x00 ‖ entry).</summary>
    public static byte[] LeafHash(ReadOnlySpan<byte> entry)
    {
        var rented = ArrayPool<byte>.Shared.Rent(entry.Length + 1);

        try
        {
            rented[0] = 0;
            entry.CopyTo(rented.AsSpan(1));

            return SHA256.HashData(rented.AsSpan(0, entry.Length + 1));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(rented);
        }
    }

    /// <summary>SHA-256(0x01 ‖ left ‖ right).</summary>
    public static byte[] NodeHash(ReadOnlySpan<byte> left, ReadOnlySpan<byte> right) =>
        SHA256.HashData([1, .. left, .. right]);

    /// <summary>The root of a tree without entries: SHA-256 of nothing.</summary>
    public static byte[] EmptyRoot() => SHA256.HashData([]);
}
