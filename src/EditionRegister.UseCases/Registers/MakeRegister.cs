using System.Text;
using EditionRegister.Domain;
using EditionRegister.Formats.Settings;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Registers;

/// <summary>Makes an empty register in a folder of its own, with its settings beside it.</summary>
public sealed class MakeRegister(Surroundings surroundings)
{
    /// <exception cref="RefusedException">register-exists.</exception>
    public Register Run(RegisterFolder folder, RegisterSettings settings, bool demo = false)
    {
        RegisterStore.Make(folder, surroundings, demo);
        OwnerOnly.Write(folder.Settings, stream => stream.Write(Encoding.UTF8.GetBytes(RegisterToml.Write(settings))));

        return Register.Open(folder, surroundings);
    }
}
