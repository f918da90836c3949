using EditionRegister.Domain.Integrity;
using EditionRegister.Store;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.UseCases.Demo;

/// <summary>Breaks a demo in one way for each rule, with the same SQL that the rules are tested with.</summary>
internal static class Faults
{
    public static void Make(RegisterFolder folder)
    {
        foreach (var rule in Rules.All)
        {
            using var stream = typeof(Faults).Assembly.GetManifestResourceStream($"Faults/{rule.Name}")
                ?? throw new InvalidOperationException($"No fault is shipped for {rule.Name}.");
            using StreamReader reader = new(stream);
            Tampering.Break(folder, reader.ReadToEnd());
        }
    }
}
