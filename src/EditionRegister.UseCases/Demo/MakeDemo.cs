using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.UseCases.Demo;

/// <summary>Makes the demo's register: the same story, codes, times and hashes every time.</summary>
public sealed class MakeDemo(Action<string> say)
{
    private const string Seed = "a small studio on the coast";

    /// <summary>Makes it anew; only another demo is ever replaced.</summary>
    /// <exception cref="RefusedException">register-is-no-demo: what lies there is somebody's own register.</exception>
    public Register Run(RegisterFolder folder)
    {
        ReplaceOnlyADemo(folder);
        ScenarioClock clock = new();
        Surroundings surroundings = new(clock, new SeededRandomness(Seed), say);
        RegisterSettings settings = new() { Name = "Saltmarsh Print Studio", BaseUrl = "https://saltmarsh.example/p" };
        var register = new MakeRegister(surroundings).Run(folder, settings, demo: true);
        new CoastalStudio(register, clock).Tell();

        return register;
    }

    private static void ReplaceOnlyADemo(RegisterFolder folder)
    {
        if (!folder.HoldsRegister)
        {
            return;
        }

        if (!new RegisterStore(folder, Surroundings.Usual).Read(reader => reader.IsDemo()))
        {
            throw new RefusedException("register-is-no-demo", $"{folder.FullPath} holds a register of your own, and the demo replaces only a demo. Nothing was changed. Run the demo in another folder.");
        }

        Directory.Delete(folder.FullPath, recursive: true);
    }
}
