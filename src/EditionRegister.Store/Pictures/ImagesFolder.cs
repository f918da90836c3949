using System.Security.Cryptography;

namespace EditionRegister.Store.Pictures;

/// <summary>The originals of pictures, each under the SHA-256 of its bytes, so that a name answers for what is in the file. Nothing here is ever changed.</summary>
public sealed class ImagesFolder(RegisterFolder folder)
{
    /// <summary><c>images/ab/abcd…</c>, seen from the register's folder.</summary>
    public static string NameOf(string sha256) => $"images/{(sha256.Length >= 2 ? sha256[..2] : sha256)}/{sha256}";

    /// <summary>Lower-case hex.</summary>
    public static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public string PathOf(string sha256) => Path.Combine(folder.FullPath, "images", sha256.Length >= 2 ? sha256[..2] : sha256, sha256);

    /// <summary>Whether something of that length stands where the file should.</summary>
    public bool Has(string sha256, long bytes) => new FileInfo(PathOf(sha256)) is { Exists: true } file && file.Length == bytes;

    /// <summary>Writes the bytes beside their place and renames them into it; what stands there whole already is left alone.</summary>
    /// <returns>True where a file was made that was not there before.</returns>
    /// <exception cref="IOException">The disk is full, or something is in the way.</exception>
    public bool Keep(string sha256, byte[] bytes)
    {
        if (Has(sha256, bytes.LongLength) && Hashes(sha256))
        {
            return false;
        }

        OwnerOnly.MakeFolder(Path.Combine(folder.FullPath, "images"));
        OwnerOnly.Write(PathOf(sha256), stream => stream.Write(bytes));

        return true;
    }

    /// <summary>Takes away what was kept for a deed that did not come to be.</summary>
    public void TakeAway(string sha256) => File.Delete(PathOf(sha256));

    /// <summary>The original; null where it is missing or is not the one that was taken in.</summary>
    public byte[]? Read(string sha256)
    {
        try
        {
            var bytes = File.ReadAllBytes(PathOf(sha256));

            return HashOf(bytes) == sha256 ? bytes : null;
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Whether the file holds the bytes its name answers for.</summary>
    public bool Hashes(string sha256)
    {
        try
        {
            using var stream = File.OpenRead(PathOf(sha256));

            return Convert.ToHexStringLower(SHA256.HashData(stream)) == sha256;
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
