using EditionRegister.Domain.Integrity;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.Store.Tests;

/// <summary>A real register in a folder of its own, gone with the test.</summary>
public sealed class TempRegister : IDisposable
{
    public TempRegister(string seed = "store tests")
    {
        Time.AutoAdvanceAmount = TimeSpan.FromSeconds(1);
        Surroundings = new Surroundings(Time, new SeededRandomness(seed), Said.Add);
        Store = RegisterStore.Make(Folder, Surroundings, demo: false);
    }

    public RegisterFolder Folder { get; } = new(Path.Combine(Path.GetTempPath(), "edreg-test-" + Guid.NewGuid().ToString("N")));

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 1, 10, 0, 0, TimeSpan.Zero));

    public List<string> Said { get; } = [];

    public Surroundings Surroundings { get; }

    public RegisterStore Store { get; }

    public List<Finding> Findings() => [.. Store.Check(_ => [])];

    /// <summary>A connection with the guards, foreign keys and checks off, as someone with a database tool and bad intent would have it.</summary>
    internal SqliteConnection OpenUnguarded()
    {
        SqliteConnection connection = new($"Data Source={Folder.Database};Pooling=False");
        connection.Open();
        connection.Run("PRAGMA foreign_keys=OFF; PRAGMA ignore_check_constraints=ON;");

        return connection;
    }

    public void Dispose() => Directory.Delete(Folder.FullPath, recursive: true);
}
