using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases.Stock;

/// <summary>Codes from a text file, one in each line, as scanners with a memory and editors write it.</summary>
public static class ScansFromFile
{
    /// <summary>UTF-8, or UTF-16 with a byte order mark; lines end in any way.</summary>
    /// <exception cref="Domain.RefusedException">file-not-found or file-unreadable.</exception>
    public static ScanList Read(string path)
    {
        if (!File.Exists(path))
        {
            throw ReadInRefusals.FileMissing(path);
        }

        try
        {
            using StreamReader reader = new(path, detectEncodingFromByteOrderMarks: true);

            return ScanList.OfLines(reader.ReadToEnd());
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw ReadInRefusals.FileUnreadable(path, failure.Message);
        }
    }
}
