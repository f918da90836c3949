using EditionRegister.Bench;

return args switch
{
    ["check", ..] => CheckFigures.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.WriteLine("""
        Figures as ratios, measured side by side in one run. Run from the clone's folder:

          dotnet run -c Release --project tests/EditionRegister.Bench -- check
              `edreg check` of the demo against an empty program, both ReadyToRun;
              and a check of 10,000 impressions in 200 works, per row, against `sqlite3 -csv` writing the same tables.
        """);

    return 2;
}
