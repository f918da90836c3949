using EditionRegister.Store;

namespace EditionRegister.UseCases.Documents;

/// <summary>Writes what goes out of the register: beside its place first, then renamed into it.</summary>
internal static class Output
{
    /// <summary>Answers the path written.</summary>
    /// <exception cref="Domain.RefusedException">output-not-written, with what the system says.</exception>
    public static string Write(string path, Action<Stream> write)
    {
        // Drawn in memory, so that only the disk can fail while the file is open.
        using MemoryStream drawn = new();
        write(drawn);

        try
        {
            OwnerOnly.Write(path, stream => drawn.WriteTo(stream));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw DocumentRefusals.NotWritten(path, failure.Message);
        }

        return path;
    }
}
