using EditionRegister.Domain;
using EditionRegister.Formats.Settings;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Registers;

/// <summary>The settings of a register as its file says them; usual ones, called like the folder, where there is no file.</summary>
internal static class RegisterFile
{
    /// <exception cref="RefusedException">The settings cannot be read; file, line and column are named.</exception>
    public static RegisterSettings Read(RegisterFolder folder) =>
        File.Exists(folder.Settings)
            ? RegisterToml.Read(File.ReadAllText(folder.Settings), folder.Settings)
            : new RegisterSettings { Name = Path.GetFileName(folder.FullPath) };
}
