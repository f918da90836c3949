using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Sizes;
using EditionRegister.Store;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.UseCases.Tests.Registers;

/// <summary>The register's settings, changed while it is open, in a file that a person may have written in.</summary>
public sealed class ChangeSettingsTests : IDisposable
{
    private readonly TempRegister _temp = new();

    private Register Register => _temp.Register;

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void What_is_changed_counts_at_once_and_the_rest_stays()
    {
        var mira = Register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        _ = Register.Settings;

        Register.ChangeSettings.Run(new SettingsCorrection { Writer = "mira", Currency = "gbp", BaseUrl = "https://studio.example/p/", Page = PageSize.Letter, PrinterDown = 0.5 });

        Assert.Equal(
            new RegisterSettings { Name = "Test", By = mira, Currency = "GBP", BaseUrl = "https://studio.example/p", Page = PageSize.Letter, PrinterOffset = new PrinterOffset(0, 0.5) },
            Register.Settings);
        Assert.Equal(Register.Settings, Register.Open(Register.Folder).Settings);
    }

    [Fact]
    public void Whoever_is_named_as_the_writer_signs_the_next_entry()
    {
        var mira = Register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });

        Register.ChangeSettings.Run(new SettingsCorrection { Writer = "Mira Tolland" });
        Register.RecordPlace.Run("Studio");

        Assert.Contains(FormattableString.Invariant($"\"by\":{mira}"), Register.LookAround.Entry(Register.LookAround.Head().N)!.Body, StringComparison.Ordinal);
    }

    [Fact]
    public void Comments_and_order_of_a_file_edited_by_hand_stay()
    {
        File.WriteAllText(Register.Folder.Settings, "# ours since 2011\nunits = \"in\"   # the framer's\nname = \"Test\"\n\n[printer]\n# measured on Tuesday\nright_mm = 0.5\ndown_mm = 0\n# by = 1\n");

        Register.ChangeSettings.Run(new SettingsCorrection { Name = "Ebb \"Tide\"", PrinterRight = -1.25 });

        Assert.Equal(
            "# ours since 2011\nunits = \"in\"   # the framer's\nname = \"Ebb \\\"Tide\\\"\"\n\n[printer]\n# measured on Tuesday\nright_mm = -1.25\ndown_mm = 0\n# by = 1\n",
            File.ReadAllText(Register.Folder.Settings));
    }

    [Fact]
    public void A_file_older_than_a_setting_gets_a_line_for_it_and_keeps_its_comments()
    {
        File.WriteAllText(Register.Folder.Settings, "# ours since 2011\nname = \"Test\"\nunits = \"in\"   # the framer's\n\n[printer]\nright_mm = 0.5\n");

        Register.ChangeSettings.Run(new SettingsCorrection { SizeWriting = SizeWriting.Cco, Currency = "USD" });

        Assert.Equal(
            "# ours since 2011\nname = \"Test\"\nunits = \"in\"   # the framer's\nsize_writing = \"cco\"\ncurrency = \"USD\"\n\n[printer]\nright_mm = 0.5\n",
            File.ReadAllText(Register.Folder.Settings));
    }

    [Fact]
    public void A_setting_is_taken_away_and_set_again_in_its_commented_line()
    {
        Register.ChangeSettings.Run(new SettingsCorrection { BaseUrl = "https://studio.example/p" });
        Register.ChangeSettings.Run(new SettingsCorrection { BaseUrl = "" });
        Assert.Null(Register.Settings.BaseUrl);

        Register.ChangeSettings.Run(new SettingsCorrection { BaseUrl = "https://other.example" });

        Assert.Single(File.ReadAllLines(Register.Folder.Settings), line => line.Contains("base_url", StringComparison.Ordinal));
        Assert.Equal("https://other.example", Register.Settings.BaseUrl);
    }

    [Fact]
    public void A_file_whose_lines_cannot_be_changed_one_by_one_is_written_anew()
    {
        File.WriteAllText(Register.Folder.Settings, "name = \"\"\"\nTest\nby = 1\"\"\"\n");

        Register.ChangeSettings.Run(new SettingsCorrection { Currency = "USD" });

        Assert.Equal(("Test\nby = 1", "USD", (long?)null), (Register.Settings.Name, Register.Settings.Currency, Register.Settings.By));
    }

    [Fact]
    public void A_wrong_value_is_refused_and_the_file_stays_as_it_is()
    {
        var before = File.ReadAllText(Register.Folder.Settings);

        var refused = Assert.Throws<RefusedException>(() => Register.ChangeSettings.Run(new SettingsCorrection { BaseUrl = "studio.example" }));

        Assert.Equal("toml-wrong-value", refused.Name);
        Assert.Equal(before, File.ReadAllText(Register.Folder.Settings));
        Assert.Equal([Register.Folder.Settings], Directory.GetFiles(Register.Folder.FullPath, "register.toml*"));
    }

    [Fact]
    public void What_another_program_changed_meanwhile_is_kept_where_it_is_another_setting()
    {
        var seen = Register.Settings;
        Register.Open(new RegisterFolder(Register.Folder.FullPath)).ChangeSettings.Run(new SettingsCorrection { Currency = "GBP" });

        Register.ChangeSettings.Run(new SettingsCorrection { Units = "in" }, seen);

        Assert.Equal(("GBP", "in"), (Register.Settings.Currency, Register.Settings.Units));
    }
}
