using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Documents;

/// <summary>The room where papers are made, on the demo.</summary>
internal static class PapersHouse
{
    public const long Harbour = 1;
    public const long GullRock = 2;

    /// <summary>The screen with the register's folder, which is another on every run, called /register.</summary>
    public static string Shown(this TestHouse house, int width = 80, int height = 19) =>
        house.Screen(width, height).Replace(house.Register.Folder.FullPath, "/register", StringComparison.Ordinal);

    public static string Said(this TestHouse house) => house.Message.Replace(house.Register.Folder.FullPath, "/register", StringComparison.Ordinal);

    /// <summary>Enters the room and picks numbers of an edition that is found by its title.</summary>
    public static async Task PickAsync(this TestHouse house, string title, string numbers)
    {
        await house.PressAsync("5", "s", "e", "/");
        await house.TypeAsync(title);
        await house.PressAsync("Enter", "r");
        await house.FillAsync(("Numbers", numbers));
    }

    /// <summary>Picks the kind of paper by its key.</summary>
    public static Task MakeAsync(this TestHouse house, string kind) => house.PressAsync("k", kind);

    public static Impression Sheet(this TestHouse house, long edition, string numbers) =>
        house.Register.LookAround.Chosen(new ImpressionChoice { Edition = edition, Sheets = numbers }).Single().Sheets.Single();

    public static CertificateStatement Statement(this TestHouse house, long edition, string number) =>
        CertificateStatementText.Read(house.Sheet(edition, number).ValidCertificate!.Statement)!;

    public static string Exported(this TestHouse house, string name) => Path.Combine(house.Register.Folder.Exports, name);
}
