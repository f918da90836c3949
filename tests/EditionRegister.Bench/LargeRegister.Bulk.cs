using EditionRegister.Domain;
using EditionRegister.Domain.Facts;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Bench;

internal static partial class LargeRegister
{
    public const int SheetsOfAWork = 50;

    private const int WorksInADeed = 500;

    /// <summary>
    /// A register of so many impressions, fifty to a work, under <paramref name="root"/>: what lies there whole is used again. Written through the
    /// logbook's writer, many works in a deed, so that a check finds nothing in it.
    /// </summary>
    public static RegisterFolder Of(string root, int impressions)
    {
        RegisterFolder folder = new(Path.Combine(root, FormattableString.Invariant($"register-{impressions}")));

        if (folder.HoldsRegister)
        {
            return folder;
        }

        // Under another name until it is whole: what a killed run left is made anew.
        RegisterFolder beside = new(folder.FullPath + ".part");

        if (Directory.Exists(beside.FullPath))
        {
            Directory.Delete(beside.FullPath, recursive: true);
        }

        Surroundings surroundings = new(TimeProvider.System, new FastRandomness(impressions), _ => { });
        new MakeRegister(surroundings).Run(beside, new RegisterSettings { Name = "Bench" });
        RegisterStore store = new(beside, surroundings);
        BulkPeople people = new(store);
        BulkWorks works = new(people);

        for (var made = 0; made < impressions / SheetsOfAWork; made += WorksInADeed)
        {
            var count = Math.Min(WorksInADeed, (impressions / SheetsOfAWork) - made);
            store.Write("read-in", writing => works.Add(writing, count));
        }

        Directory.Move(beside.FullPath, folder.FullPath);

        return folder;
    }

    /// <summary>The same register every time, without a hash for every number drawn.</summary>
    private sealed class FastRandomness(int seed) : Randomness
    {
        private readonly Random _random = new(seed);

        public override void Fill(Span<byte> bytes) => _random.NextBytes(bytes);

        public override int Below(int bound) => _random.Next(bound);
    }
}
