using EditionRegister.Bench;
using EditionRegister.Bench.Readings;

return args switch
{
    ["check", ..] => CheckFigures.Run(),
    ["chest"] => ChestFigures.Run(kept: null),
    ["chest", var folder] => ChestFigures.Run(folder),
    ["rooms"] => RoomFigures.Run(kept: null),
    ["rooms", var folder] => RoomFigures.Run(folder),
    ["make", var folder, var impressions] => Make(folder, int.Parse(impressions, System.Globalization.CultureInfo.InvariantCulture)),
    ["readings", "--data", var folder] => ReadingFigures.Run(folder, Console.Out),
    _ => Usage(),
};

static int Make(string folder, int impressions)
{
    Console.WriteLine(LargeRegister.Of(folder, impressions).FullPath);

    return 0;
}

static int Usage()
{
    Console.WriteLine("""
        Figures as ratios, measured side by side in one run. Run from the clone's folder:

          dotnet run -c Release --project tests/EditionRegister.Bench -- check
              `edreg check` of the demo against an empty program, both ReadyToRun;
              and a check of 10,000 impressions in 200 works, per row, against `sqlite3 -csv` writing the same tables.

          dotnet run -c Release --project tests/EditionRegister.Bench -- chest [FOLDER]
              the plan chest at 100,000 and 1,000,000 impressions: the first list, the sheets, each key typed, memory.
              The registers are kept in FOLDER for the next run, or made in a temp folder (some minutes).

          dotnet run -c Release --project tests/EditionRegister.Bench -- rooms [FOLDER]
              the text-mode UI: from a key to the screen drawn anew at 100,000 and 1,000,000 impressions, and from the start of
              the program, ReadyToRun, to its first picture against an empty program. Needs tmux, script and pkill.

          dotnet run -c Release --project tests/EditionRegister.Bench -- readings --data FOLDER
              what is read of inscriptions, dates, sizes and techniques of museums, against their labels and figures, with every
              disagreement; how many texts a second, and whether any text of 64 KB makes a reader slow. The files are tables of the
              names the program looks for (inscriptions_labelled*.tsv, dates*.tsv and so on); those that are not there are named.

          dotnet run -c Release --project tests/EditionRegister.Bench -- make FOLDER IMPRESSIONS
              a register of so many impressions under FOLDER, fifty to a work, if it is not there yet.
        """);

    return 2;
}
