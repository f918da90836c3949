using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Registers;
using Microsoft.Data.Sqlite;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>The register's own file: not there, not ours, newer, busy, damaged.</summary>
internal static class RegisterProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("register-exists", studio => new MakeRegister(Studio.Surroundings("again")).Run(studio.Register.Folder, new() { Name = "Again" })),
        new("register-is-no-demo", studio => new MakeDemo(_ => { }).Run(studio.Register.Folder)),
        new("settings-changed-meanwhile", studio =>
        {
            var seen = studio.Register.Settings;
            studio.Settings("name = \"Studio\"\ncurrency = \"GBP\"\n");
            studio.Register.ChangeSettings.Run(new SettingsCorrection { Currency = "USD" }, seen);
        }),
        new("settings-not-written", studio =>
        {
            File.Delete(studio.Register.Folder.Settings);
            Directory.CreateDirectory(studio.Register.Folder.Settings);
            studio.Register.ChangeSettings.Run(new SettingsCorrection { Currency = "USD" });
        }),
        new("register-not-found", studio =>
        {
            File.Delete(studio.Database);
            studio.Register.LookAround.Head();
        }),
        new("register-cannot-open", studio =>
        {
            File.WriteAllText(studio.Database, string.Concat(Enumerable.Repeat("This is a shopping list. ", 50)));
            studio.Register.LookAround.Head();
        }),
        new("register-cannot-open", studio =>
        {
            using (var file = File.OpenWrite(studio.Database))
            {
                file.SetLength(file.Length / 8 / 4096 * 4096);
            }

            studio.Register.LookAround.Works();
        }),
        new("register-cannot-open", studio =>
        {
            // Read by a program that finds a folder where the file's journal should be.
            Directory.CreateDirectory(studio.Database + "-wal");
            studio.Register.LookAround.Head();
        }),
        new("register-newer", studio =>
        {
            studio.Break("PRAGMA user_version = 99");
            studio.Register.LookAround.Head();
        }),
        new("register-damaged", studio =>
        {
            studio.Break("UPDATE frontier SET level = level + 70");
            studio.Register.RecordPlace.Run("Attic");
        }),
        new("register-damaged", studio =>
        {
            studio.Break("UPDATE register SET schema = 1");
            studio.Register.RecordPlace.Run("Attic");
        }),
        new("upgrade-not-copied", studio =>
        {
            File.Copy(Path.Combine(Approved.TestsFolder, "EditionRegister.Store.Tests", "fixtures", "register-0001.db"), studio.Database, overwrite: true);
            studio.Write("register/backups", "A file where the folder should be.");
            studio.Register.RecordPlace.Run("Attic");
        }),
        new("register-busy", studio =>
        {
            using SqliteConnection other = new($"Data Source={studio.Database};Pooling=False");
            other.Open();
            using var command = other.CreateCommand();
            command.CommandText = "BEGIN IMMEDIATE";
            command.ExecuteNonQuery();
            new LogbookWriter(studio.Database, TimeProvider.System, new SeededRandomness("busy"), () => null, _ => { }) { Patience = TimeSpan.FromMilliseconds(50) }.Write("nothing", _ => true);
        }),
        new("logbook-unreadable", studio => Rebuild.Make(studio.In("anew.db"), [new StoredEntry(1, "not an entry"u8.ToArray())], [])),
    ];
}
