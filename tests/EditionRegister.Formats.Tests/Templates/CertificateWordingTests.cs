using EditionRegister.Domain;
using EditionRegister.Formats.Templates;

namespace EditionRegister.Formats.Tests.Templates;

public sealed class CertificateWordingTests : IDisposable
{
    private readonly TempFolder _own = new();

    [Fact]
    public void The_shipped_wording_has_words_for_every_key_and_is_honest_about_law()
    {
        var wording = CertificateWording.Load(overrideFolder: null);

        Assert.Equal(24, CertificateWording.LabelKeys.Select(wording.Label).Distinct().Count());
        Assert.Equal(
            "This certificate records what the maker's register says on the day of issue. What a certificate for a print has to disclose is decided by local law, which differs from place to place; ask licensed advice where in doubt.",
            wording.Caution);
    }

    [Fact]
    public void The_users_own_file_comes_before_the_shipped_one()
    {
        _own.Write("certificate.toml", Shipped().Replace("\"Artist\"", "\"Künstlerin\"", StringComparison.Ordinal));

        Assert.Equal("Künstlerin", CertificateWording.Load(_own.Path).Label("maker"));
    }

    [Fact]
    public void A_file_written_before_there_were_sets_is_read_as_it_is()
    {
        var before = string.Join('\n', Shipped().Split('\n').Where(line => !line.StartsWith("altered =", StringComparison.Ordinal) && !line.StartsWith("set =", StringComparison.Ordinal) && !line.StartsWith("parts =", StringComparison.Ordinal)));
        _own.Write("certificate.toml", before);

        var wording = CertificateWording.Load(_own.Path);

        Assert.Equal(["Altered on the sheet", "Set of prints", "Its parts"], [wording.Label("altered"), wording.Label("set"), wording.Label("parts")]);
    }

    [Fact]
    public void Refuses_a_key_that_is_not_known()
    {
        var path = _own.Write("certificate.toml", "motto = \"Ars longa\"\n" + Shipped());

        var refused = Assert.Throws<RefusedException>(() => CertificateWording.Load(_own.Path));

        Assert.Equal("toml-unknown-key", refused.Name);
        Assert.StartsWith($"{path} was not read: line 1, column 1 has motto, which nothing reads. Take it out, or write one of these: heading, ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_a_missing_label_at_the_line_of_its_table()
    {
        var path = _own.Write("certificate.toml", Shipped().Replace("state = \"State\"\n", "", StringComparison.Ordinal));

        var refused = Assert.Throws<RefusedException>(() => CertificateWording.Load(_own.Path));

        Assert.Equal($"{path} was not read: labels.state is missing (line 25 is where it is looked for). Add it.", refused.Message);
    }

    [Fact]
    public void Refuses_a_file_that_is_not_utf_8()
    {
        var path = _own.Write("certificate.toml", "");
        File.WriteAllBytes(path, [.. "heading = \"Zertifikat f"u8, 0xFC, .. "r\""u8]);

        var refused = Assert.Throws<RefusedException>(() => CertificateWording.Load(_own.Path));

        Assert.Equal($"{path} was not read: it is not UTF-8 text. Save it again as UTF-8.", refused.Message);
    }

    public void Dispose() => _own.Dispose();

    private static string Shipped()
    {
        using StreamReader reader = new(Formats.Templates.Templates.Open("certificate.toml", null));
        return reader.ReadToEnd();
    }
}
