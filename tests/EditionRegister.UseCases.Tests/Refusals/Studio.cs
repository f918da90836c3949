using EditionRegister.Domain;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Sqlite;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>
/// A register to be refused by, for one provocation only. Work 1 “Harbour” (edition 1: 1-4, A/P I-II): 1/4 signed, 2/4 not, places 3 and 4 of
/// the pile kept, 5 left out, 6 held out. Work 2 “Gull Rock”: a reduction print, three sheets, no edition. Work 3 “Lantern”: nothing printed.
/// Work 4 “Tide Table”: two plates, edition 2 closed. Work 5 “Foundry”: someone else's edition 3. Work 6 “Loft”: edition 4, partly known.
/// </summary>
public sealed class Studio : IDisposable
{
    private static readonly Lazy<TempFolder> Furnished = new(Furnish);

    private readonly TempFolder _folder = new();

    public Studio()
    {
        Directory.CreateDirectory(In("register"));
        File.Copy(Furnished.Value.In("register", "register.db"), In("register", "register.db"));
        File.Copy(Furnished.Value.In("register", "register.toml"), In("register", "register.toml"));
        Register = Register.Open(new RegisterFolder(In("register")), Surroundings("provocation"));
    }

    public Register Register { get; private set; }

    public string Database => Register.Folder.Database;

    public static ImpressionChoice Pile(long work, string places) => new() { Work = work, Pile = places };

    public static ImpressionChoice Numbers(long edition, string numbers) => new() { Edition = edition, Sheets = numbers };

    public string In(params string[] parts) => _folder.In(parts);

    public string Code(long work, int place) => Register.LookAround.Chosen(Pile(work, FormattableString.Invariant($"{place}")))[0].Sheets[0].ShownCode;

    /// <summary>Writes a file beside the register, or below it, and answers its path.</summary>
    public string Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(name))!);
        File.WriteAllText(In(name), text);

        return In(name);
    }

    /// <summary>Goes on with other settings.</summary>
    public void Settings(string toml)
    {
        Write("register/register.toml", toml);
        Register = Register.Open(Register.Folder, Surroundings("provocation"));
    }

    public void Break(string sql) => Tampering.Break(Register.Folder, sql);

    /// <summary>The text with the folder of this run taken out of it.</summary>
    public string Told(string text) => text.Replace(_folder.Path, "/studio", StringComparison.Ordinal);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        _folder.Dispose();
    }

    internal static Surroundings Surroundings(string seed)
    {
        FakeTimeProvider time = new(new DateTimeOffset(2026, 4, 1, 10, 0, 0, TimeSpan.Zero)) { AutoAdvanceAmount = TimeSpan.FromSeconds(1) };
        time.SetLocalTimeZone(TimeZoneInfo.Utc);

        return new Surroundings(time, new SeededRandomness(seed), _ => { });
    }

    private static TempFolder Furnish()
    {
        TempFolder folder = new();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => folder.Dispose();
        var register = new MakeRegister(Surroundings("studio")).Run(new RegisterFolder(folder.In("register")), new RegisterSettings { Name = "Studio" });
        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        register.RecordPerson.Run(new NewPerson { Name = "Ada Brook" });
        register.RecordPerson.Run(new NewPerson { Name = "Adam Fenwright" });
        register.RecordPlace.Run("Studio › Drawer 1");
        register.RecordPlace.Run("Loft › Drawer 1");
        Harbour(register);
        GullRock(register);
        register.RecordWork.Run(new NewWork { Title = "Lantern" }, ["1"]);
        TideTable(register);
        Printed(register, "Foundry", 1);
        register.DeclareEdition.Run(5, new NewEdition { Extent = "someone-elses", Numberings = [NumberingPlan.Read("1-50")] });
        register.GiveNumbers.ByHand(3, Pile(5, "1"), "7");
        Printed(register, "Loft", 1);
        register.DeclareEdition.Run(6, new NewEdition { Extent = "partly-known", Numberings = [NumberingPlan.Read("1-20")] });
        register.GiveNumbers.ByHand(4, Pile(6, "1"), "3");
        using SqliteConnection connection = new($"Data Source={folder.In("register", "register.db")};Pooling=False");
        connection.Open();
        using var whole = connection.CreateCommand();
        whole.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
        whole.ExecuteNonQuery();

        return folder;
    }

    private static void Harbour(Register register)
    {
        register.RecordWork.Run(new NewWork { Title = "Harbour" }, ["1"]);
        register.RecordMatrix.Run(1, "block", "lino", "no", RecordedDate.None);
        register.RecordPrintRun.Run(1, new NewPrintRun { Started = 6, HeldOut = 1, Printed = RecordedDate.Read("2026-02-10") }, "Studio › Drawer 1");
        register.SortPulls.Run(Pile(1, "1-4"), "kept");
        register.SortPulls.Run(Pile(1, "5"), "left-out", "smudge");
        register.DeclareEdition.Run(1, new NewEdition { Numberings = [NumberingPlan.Read("1-4"), NumberingPlan.Read("A/P I-II")] });
        register.GiveNumbers.AsPiled(1, null, Pile(1, "1-2"));
        register.InscribeImpressions.Run(Pile(1, "1"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
    }

    private static void GullRock(Register register)
    {
        register.RecordWork.Run(new NewWork { Title = "Gull Rock" }, ["1"]);
        register.RecordMatrix.Run(2, "block", "lino", "yes", RecordedDate.None);
        register.RecordPrintRun.Run(2, new NewPrintRun { Started = 3, Printed = RecordedDate.Read("2026-02-20") }, "Studio › Drawer 1");
        register.SortPulls.Run(Pile(2, "1-3"), "kept");
    }

    private static void TideTable(Register register)
    {
        register.RecordWork.Run(new NewWork { Title = "Tide Table" }, ["1"]);
        register.RecordMatrix.Run(4, "plate", "copper", "no", RecordedDate.None);
        register.RecordMatrix.Run(4, "plate", "copper", "no", RecordedDate.None);
        register.RecordPrintRun.Run(4, new NewPrintRun { Started = 2, Printed = RecordedDate.Read("2026-01-15") });
        register.SortPulls.Run(Pile(4, "1-2"), "kept");
        register.DeclareEdition.Run(4, new NewEdition { Numberings = [NumberingPlan.Read("1-2")] });
        register.GiveNumbers.AsPiled(2, null, null);
        register.StateMatrixFate.Run(4, 3, "cancelled", RecordedDate.Read("2026-02-01"), null, correct: false);
        register.StateMatrixFate.Run(4, 4, "cancelled", RecordedDate.Read("2026-02-01"), null, correct: false);
        register.CloseEdition.Run(2);
    }

    private static void Printed(Register register, string title, int sheets)
    {
        var work = register.RecordWork.Run(new NewWork { Title = title }, ["1"]);
        register.RecordPrintRun.Run(work, new NewPrintRun { Started = sheets, Printed = RecordedDate.Read("2026-01") });
        register.SortPulls.Run(Pile(work, FormattableString.Invariant($"1-{sheets}")), "kept");
    }
}
