using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Documents;
using EditionRegister.Formats.Templates;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Inventory;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Certificates, labels, inventory, and the settings and templates they are made with.</summary>
internal static class PaperProvocations
{
    private const string Labels = "paper_width_mm = 210\npaper_height_mm = 297\ncolumns = 1\nrows = 1\nleft_mm = 0\ntop_mm = 0\n";

    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("certificate-sheet-not-kept", studio => Issue(studio, Pile(1, "5"))),
        new("certificate-sheet-not-numbered", studio => Issue(studio, Pile(1, "3"))),
        new("certificate-edition-not-ours", studio => Issue(studio, Pile(5, "1"))),
        new("certificate-edition-partly-known", studio => Issue(studio, Pile(6, "1"))),
        new("certificate-stands-already", studio =>
        {
            Issue(studio, Pile(1, "1"));
            Issue(studio, Pile(1, "1"));
        }),
        new("certificate-to-supersede-not-valid", studio =>
        {
            var (work, sheets) = studio.Register.LookAround.Chosen(Pile(1, "1"))[0];
            CertificateConditions.Demand(work, sheets[0], $"{sheets[0].ShownCode}-C1");
        }),
        new("certificate-contradicted", studio =>
        {
            studio.Break("UPDATE impression SET pencilled = '2/5' WHERE id = 1");
            Issue(studio, Pile(1, "1"));
        }),
        new("certificate-none-stands", studio => studio.Register.WriteCertificates.Run(Pile(1, "1"))),
        new("certificate-statement-lost", studio =>
        {
            Issue(studio, Pile(1, "1"));
            studio.Break("UPDATE document SET statement = NULL");
            studio.Register.WriteCertificates.Run(Pile(1, "1"));
        }),
        new("certificate-wording-too-long", studio =>
        {
            studio.Write("register/templates/certificate.toml", Template("certificate.toml").Replace("in doubt.\n", string.Concat(Enumerable.Repeat("in doubt. Ask advice where ", 500)) + "in doubt.\n", StringComparison.Ordinal));
            Issue(studio, Pile(1, "1"));
            studio.Register.WriteCertificates.Run(Pile(1, "1"));
        }),
        new("output-not-written", studio =>
        {
            Issue(studio, Pile(1, "1"));
            studio.Register.WriteCertificates.Run(Pile(1, "1"), studio.Write("letter.txt", "A file, and no folder."));
        }),
        new("nothing-to-list", studio => studio.Register.ExportInventory.Run(new InventoryChoice { Edition = 77 }, Stream.Null)),
        new("labels-none", _ => LabelsPdf.Write(Stream.Null, LabelSheets.Named("a4-3x8", null), [], 1, new PrinterOffset(0, 0))),
        new("label-sheet-unknown", studio => studio.Register.WriteLabels.Run(Pile(1, "1"), "a5-2x2")),
        new("label-position", studio => studio.Register.WriteLabels.Run(Pile(1, "1"), "a4-3x8", firstPosition: 25)),
        new("label-off-paper", studio =>
        {
            studio.Settings("name = \"Studio\"\n[printer]\nright_mm = -20\n");
            studio.Register.WriteLabels.Run(Pile(1, "1"), "a4-3x8");
        }),
        new("label-too-narrow", studio => Label(studio, Labels + "label_width_mm = 9\nlabel_height_mm = 30\npitch_x_mm = 9\npitch_y_mm = 30\n")),
        new("label-text-too-long", studio => Label(studio, Labels + "label_width_mm = 60\nlabel_height_mm = 7\npitch_x_mm = 60\npitch_y_mm = 7\n")),
        new("label-sheet-geometry", studio => Label(studio, Labels + "label_width_mm = 230\nlabel_height_mm = 30\npitch_x_mm = 230\npitch_y_mm = 30\n")),
        new("qr-link-too-long", studio => Linked(studio, 3_000)),
        new("qr-too-dense", studio => Linked(studio, 1_000)),
        new("template-not-utf-8", studio =>
        {
            studio.Write("register/templates/certificate.toml", "");
            File.WriteAllBytes(studio.In("register", "templates", "certificate.toml"), [0x68, 0xFC]);
            Issue(studio, Pile(1, "1"));
        }),
        new("toml-broken", studio => Set(studio, "name = \"Studio\npage = \"A4\"\n")),
        new("toml-unknown-key", studio => Set(studio, "name = \"Studio\"\nunit = \"mm\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\npage = \"A5\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = 5\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\nunits = \"cm\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\ncurrency = \"euro\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\nby = 0\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\nby = \"Mira\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\nbase_url = \"example.org\"\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\n[printer]\ndown_mm = 21\n")),
        new("toml-wrong-value", studio => Set(studio, "name = \"Studio\"\n[printer]\ndown_mm = \"1\"\n")),
        new("toml-wrong-value", studio => Label(studio, Labels.Replace("rows = 1", "rows = 0", StringComparison.Ordinal))),
        new("toml-wrong-value", studio => Label(studio, Labels.Replace("= 297", "= -297", StringComparison.Ordinal))),
        new("toml-wrong-value", studio => Label(studio, Labels.Replace("left_mm = 0", "left_mm = -1", StringComparison.Ordinal))),
        new("toml-missing-key", studio => Set(studio, "page = \"A4\"\n")),
    ];

    private static void Issue(Studio studio, ImpressionChoice choice) => studio.Register.IssueCertificates.Run(choice);

    private static void Set(Studio studio, string toml)
    {
        studio.Settings(toml);
        Assert.NotNull(studio.Register.Settings);
    }

    private static void Label(Studio studio, string sheet)
    {
        studio.Write("register/templates/label-sheets/mine.toml", sheet);
        studio.Register.WriteLabels.Run(Pile(1, "1"), "mine");
    }

    private static void Linked(Studio studio, int length)
    {
        studio.Settings($"name = \"Studio\"\nbase_url = \"https://example.org/{new string('p', length)}\"\n");
        studio.Register.WriteLabels.Run(Pile(1, "1"), "a4-3x8");
    }

    private static string Template(string name)
    {
        using StreamReader reader = new(Templates.Open(name, null));

        return reader.ReadToEnd();
    }
}
