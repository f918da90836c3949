using System.Text.Json;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Documents;

public class CertificateStatementTextTests
{
    private static readonly CertificateStatement Statement =
        CertificateComposer.Compose(Harbour.Clean(), Harbour.Clean().The("4/12"), ACertificate.Terms(supersedes: "EC-0"));

    [Fact]
    public void What_is_written_is_read_back()
    {
        var text = CertificateStatementText.Write(Statement);

        var read = CertificateStatementText.Read(text)!;

        Assert.Equal(Statement with { Lines = [] }, read with { Lines = Statement.Lines.Take(0).ToArray() });
        Assert.Equal(Statement.Lines, read.Lines);
        Assert.Equal(text, CertificateStatementText.Write(read));
    }

    // The framework's own reader is the second opinion on names and order.
    [Fact]
    public void Names_and_order_never_change()
    {
        using var json = JsonDocument.Parse(CertificateStatementText.Write(Statement));

        Assert.Equal(
            ["heading", "lines", "code", "serial", "issued", "link", "signature-label", "date-label", "caution", "logbook-sentence", "page-word", "language", "page", "supersedes"],
            json.RootElement.EnumerateObject().Select(property => property.Name));
        Assert.Equal("""{"key":"maker","label":"MAKER","value":"Mara Quill"}""", json.RootElement.GetProperty("lines")[0].GetRawText());
        Assert.Equal("A4", json.RootElement.GetProperty("page").GetString());
    }

    [Fact]
    public void Labels_of_serial_issue_and_predecessor_are_frozen_too()
    {
        Assert.Equal(
            [new StatementLine("serial", "SERIAL", "EC-1"), new("issued", "ISSUED", "7 March 2026"), new("supersedes", "SUPERSEDES", "EC-0")],
            Statement.Lines.TakeLast(3));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"heading\":\"x\"}")]
    public void Damage_reads_as_nothing(string? text)
    {
        Assert.Null(CertificateStatementText.Read(text));
    }

    [Theory]
    [InlineData("\"A4\"", "\"A9\"")]
    [InlineData("\"A4\"", "4")]
    [InlineData("\"EC-1\"", "null")]
    [InlineData("\"Mara Quill\"", "\"\\uD83D\"")]
    [InlineData("\"code\":", "\"kode\":")]
    [InlineData("\"lines\":[", "\"lines\":[[],")]
    public void One_part_damaged_spoils_the_whole(string part, string damaged)
    {
        var text = CertificateStatementText.Write(Statement);

        var spoilt = text.Replace(part, damaged, StringComparison.Ordinal);

        Assert.NotEqual(text, spoilt);
        Assert.Null(CertificateStatementText.Read(spoilt));
    }
}
