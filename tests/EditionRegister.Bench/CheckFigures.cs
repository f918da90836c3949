using EditionRegister.Store;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.Bench;

/// <summary>What a check costs: to start, and per row.</summary>
internal static class CheckFigures
{
    private const int Rounds = 25;
    private const int Works = 200;
    private const int SheetsEach = 50;

    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("edreg-bench-").FullName;

        try
        {
            var edreg = Programs.Publish("src/EditionRegister.Cli", "edreg", folder);
            var empty = Programs.Publish("tests/EditionRegister.Empty", "EditionRegister.Empty", folder);
            Start(edreg, empty, folder);
            PerRow(edreg, folder);

            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Start(string edreg, string empty, string folder)
    {
        RegisterFolder demo = new(Path.Combine(folder, "demo"));
        new MakeDemo(_ => { }).Run(demo);
        List<double> checks = [], nothings = [];

        for (var round = 0; round < Rounds; round++)
        {
            nothings.Add(Programs.Time(empty));
            checks.Add(Programs.Time(edreg, "check", "--register", demo.FullPath));
        }

        var (check, nothing) = (Programs.Median(checks), Programs.Median(nothings));
        Print($"check of the demo, whole process: {check:0} ms; an empty program: {nothing:0} ms; ratio {check / nothing:0.0} (aim 4.0 or less)");
    }

    private static void PerRow(string edreg, string folder)
    {
        RegisterFolder big = new(Path.Combine(folder, "big"));
        var rows = LargeRegister.Make(big, Works, SheetsEach);
        var tables = string.Concat(LargeRegister.Tables.Select(table => $"SELECT * FROM {table};"));
        var today = DateOnly.FromDateTime(DateTime.Now).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        List<double> checks = [], dumps = [], lookings = [], maps = [];

        for (var round = 0; round < 5; round++)
        {
            maps.Add(Programs.Time(edreg, "map", "1", "--register", big.FullPath));
            lookings.Add(Programs.Time(edreg, "map", "1", "--as-of", today, "--register", big.FullPath));
            dumps.Add(Programs.Time("sqlite3", "-csv", "-readonly", big.Database, tables));
            checks.Add(Programs.Time(edreg, "check", "--register", big.FullPath));
        }

        var (check, dump) = (Programs.Median(checks), Programs.Median(dumps));
        Print($"check of {Works * SheetsEach:#,0} impressions in {Works} works, {rows:#,0} rows, replay included: {check:0} ms, {check * 1000 / rows:0.0} µs a row");
        Print($"map of one edition: {Programs.Median(maps):0} ms; as of a day, all of them folded anew: {Programs.Median(lookings):0} ms, {Programs.Median(lookings) * 1000 / rows:0.0} µs a row");
        Print($"sqlite3 -csv of the same tables: {dump:0} ms, {dump * 1000 / rows:0.0} µs a row; ratio {check / dump:0.0}");
    }

    private static void Print(FormattableString line) => Console.WriteLine(FormattableString.Invariant(line));
}
