using EditionRegister.Domain.Stock;

namespace EditionRegister.Domain.Tests.Stock;

public class ScanListTests
{
    [Fact]
    public void A_file_is_read_line_by_line_whatever_ends_its_lines()
    {
        var read = ScanList.OfLines("\uFEFF# drawer 2, Monday\r\n7KQ4-M2X3\r\n\r\n  7kq4 m2x3 \r9H2BPPQ\nfoo\n");

        Assert.Equal(["7KQ4-M2X3"], read.Codes.Select(code => code.ToString()));
        Assert.Equal(["line 4"], read.Repeated.Select(scan => scan.Where));
        Assert.Equal([("line 5", "9H2BPPQ"), ("line 6", "foo")], read.Misread.Select(scan => (scan.Where, scan.Read.Text)));
    }

    [Fact]
    public void A_line_of_codes_is_parted_by_commas_and_semicolons_and_never_by_blanks()
    {
        var read = ScanList.OfTyped("7KQ4 M2X3; https://saltmarsh.example/p/7KQ4M2X3,, ");

        Assert.Single(read.Codes);
        Assert.Equal(["code 2"], read.Repeated.Select(scan => scan.Where));
        Assert.Empty(read.Misread);
    }

    [Fact]
    public void Nothing_is_read_from_nothing()
    {
        var read = ScanList.OfLines("\n# nothing there\n");

        Assert.Empty(read.Codes);
        Assert.Empty(read.Misread);
    }
}
