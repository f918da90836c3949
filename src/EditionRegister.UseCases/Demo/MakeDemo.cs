using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Inventory;
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
        new JigsawPrint(register, clock).Tell();
        new VariedEdition(register, clock).Tell();
        new EstateRestrike(register, clock).Tell();
        new PortfolioOfFour(register, clock).Tell();
        new ConsignmentThatEndsInASale(register, clock).Tell();
        new LoanWithDamage(register, clock).Tell();
        new StockTakeWithAStranger(register, clock).Tell();

        return register;
    }

    /// <summary>Breaks a demo in one way for each rule, for a check to find.</summary>
    public static void MakeFaulty(Register register) => Faults.Make(register.Folder);

    /// <summary>Writes every document of the demo: certificates, a sheet of labels, the inventory. Answers the files, in that order.</summary>
    public static IReadOnlyList<string> WriteDocuments(Register register, string folder)
    {
        var harbour = register.LookAround.Works().First(work => work.Title == CoastalStudio.Reduction).Editions[0].Id;
        ImpressionChoice certified = new() { Edition = harbour, Sheets = "1, 3" };
        ImpressionChoice whole = new() { Edition = harbour, Sheets = "1-12, A/P I-II" };
        var inventory = Path.Combine(folder, "inventory.csv");
        register.ExportInventory.Run(new InventoryChoice(), inventory);

        return
        [
            .. register.WriteCertificates.Run(certified, folder),
            register.WriteLabels.Run(whole, "a4-3x8", firstPosition: 4, Path.Combine(folder, "labels.pdf")).Path,
            inventory,
        ];
    }

    private static void ReplaceOnlyADemo(RegisterFolder folder)
    {
        if (!folder.HoldsRegister)
        {
            return;
        }

        if (!new RegisterStore(folder, Surroundings.Usual).Read(reader => reader.IsDemo()))
        {
            throw new RefusedException("register-is-no-demo", $"{folder.FullPath} holds a register of your own, and the demo replaces only a demo. Nothing was changed. Name another folder for the demo; on the command line with --to.");
        }

        Directory.Delete(folder.FullPath, recursive: true);
    }
}
