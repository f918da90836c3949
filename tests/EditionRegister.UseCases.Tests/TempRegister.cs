using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Registers;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.UseCases.Tests;

/// <summary>An empty register in a folder of its own, with a clock that moves a second a look and codes that are the same every time.</summary>
public sealed class TempRegister : IDisposable
{
    private readonly TempFolder _folder = new();

    public TempRegister()
    {
        Time.AutoAdvanceAmount = TimeSpan.FromSeconds(1);
        Time.SetLocalTimeZone(TimeZoneInfo.Utc);
        Register = new MakeRegister(new Surroundings(Time, new SeededRandomness("use case tests"), _ => { }))
            .Run(new RegisterFolder(_folder.In("register")), new RegisterSettings { Name = "Test" });
    }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 1, 10, 0, 0, TimeSpan.Zero));

    public Register Register { get; }

    public string In(params string[] parts) => _folder.In(parts);

    /// <summary>Writes a file beside the register and answers its path.</summary>
    public string File(string name, string text)
    {
        System.IO.File.WriteAllText(In(name), text);

        return In(name);
    }

    /// <summary>How many rows a table has.</summary>
    public long Count(string table)
    {
        using Microsoft.Data.Sqlite.SqliteConnection connection = new($"Data Source={Register.Folder.Database};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT count(*) FROM {table}";

        return (long)command.ExecuteScalar()!;
    }

    public void Dispose() => _folder.Dispose();
}
