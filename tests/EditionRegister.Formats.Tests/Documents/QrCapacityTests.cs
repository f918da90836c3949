using EditionRegister.Domain;
using EditionRegister.Formats.Documents.Qr;

namespace EditionRegister.Formats.Tests.Documents;

public sealed class QrCapacityTests
{
    // Bytes at level M: computed from the tables of nayuki/QR-Code-generator @777682a.
    [Theory]
    [InlineData(1, 14)]
    [InlineData(2, 26)]
    [InlineData(3, 42)]
    [InlineData(4, 62)]
    [InlineData(5, 84)]
    [InlineData(6, 106)]
    [InlineData(7, 122)]
    [InlineData(8, 152)]
    [InlineData(9, 180)]
    [InlineData(10, 213)]
    public void A_version_holds_so_many_bytes_and_one_more_needs_the_next(int version, int bytes)
    {
        var full = QrMatrix.Of(new string('a', bytes));
        var over = QrMatrix.Of(new string('a', bytes + 1));

        Assert.Equal(version, full.Version);
        Assert.Equal(17 + (4 * version), full.Modules);
        Assert.Equal(version + 1, over.Version);
    }

    // Alphanumeric at level M: the same tables.
    [Theory]
    [InlineData(1, 20)]
    [InlineData(2, 38)]
    [InlineData(3, 61)]
    [InlineData(4, 90)]
    public void A_version_holds_so_many_capitals_and_digits(int version, int letters)
    {
        Assert.Equal(version, QrMatrix.Of(new string('A', letters)).Version);
        Assert.Equal(version + 1, QrMatrix.Of(new string('A', letters + 1)).Version);
    }

    // The worked example of qrcode.com/en/howto/code.html: 50 alphanumerics at M give 29 modules; at 4 dots of
    // 400 dpi a module the symbol is 7.366 mm and 9.398 mm with its margin.
    [Fact]
    public void The_worked_example_comes_out_with_its_margin()
    {
        var matrix = QrMatrix.Of(new string('A', 50));
        const double module = 4 * 25.4 / 400;

        Assert.Equal(3, matrix.Version);
        Assert.Equal(7.366, matrix.Modules * module, tolerance: 0.0005);
        Assert.Equal(9.398, matrix.ModulesWithQuiet * module, tolerance: 0.0005);
    }

    [Fact]
    public void A_link_beyond_the_largest_version_is_refused()
    {
        Assert.Equal(40, QrMatrix.Of(new string('a', 2331)).Version);

        var refused = Assert.Throws<RefusedException>(() => QrMatrix.Of(new string('a', 2332)));

        Assert.Equal("qr-link-too-long", refused.Name);
        Assert.Equal("No document was written: a link of 2332 bytes is more than a QR code can hold. Choose a shorter base_url.", refused.Message);
    }

    [Fact]
    public void The_rectangles_cover_each_dark_module_once_and_nothing_else()
    {
        var matrix = QrMatrix.Of(Demo.Link);
        var covered = new int[matrix.Modules, matrix.Modules];

        foreach (var box in matrix.DarkRectangles())
        {
            for (var row = (int)box.Y; row < box.Y + box.Height; row++)
            {
                for (var column = (int)box.X; column < box.X + box.Width; column++)
                {
                    covered[row - QrMatrix.QuietModules, column - QrMatrix.QuietModules]++;
                }
            }
        }

        for (var row = 0; row < matrix.Modules; row++)
        {
            for (var column = 0; column < matrix.Modules; column++)
            {
                Assert.Equal(matrix.IsDark(row, column) ? 1 : 0, covered[row, column]);
            }
        }
    }
}
