using System.Text;
using EditionRegister.Domain;
using EditionRegister.Domain.Documents;
using QRCoder;
using QRCoder.Exceptions;

namespace EditionRegister.Formats.Documents.Qr;

/// <summary>A QR code at error correction level M, as dark and light modules without its quiet zone.</summary>
internal sealed class QrMatrix
{
    /// <summary>ISO/IEC 18004 asks for four modules of nothing on every side.</summary>
    public const int QuietModules = 4;

    /// <summary>Millimetres: below this, office printers and phones part company.</summary>
    public const double SmallestModule = 0.33;

    private readonly bool[,] _dark;

    private QrMatrix(bool[,] dark, int version) => (_dark, Version) = (dark, version);

    /// <summary>1 to 40; a version has 17 + 4 × version modules a side.</summary>
    public int Version { get; }

    public int Modules => _dark.GetLength(0);

    public int ModulesWithQuiet => Modules + (2 * QuietModules);

    /// <exception cref="RefusedException">The link is longer than a QR code can hold.</exception>
    public static QrMatrix Of(string link)
    {
        try
        {
            // Byte mode of a URL is plain ASCII; anything beyond is percent-encoded before it comes here.
            using var data = QRCodeGenerator.GenerateQrCode(link, QRCodeGenerator.ECCLevel.M);
            return new(Inner(data.ModuleMatrix), data.Version);
        }
        catch (DataTooLongException)
        {
            throw new RefusedException(
                "qr-link-too-long",
                $"No document was written: a link of {Encoding.UTF8.GetByteCount(link)} bytes is more than a QR code can hold. Choose a shorter base_url.");
        }
    }

    public bool IsDark(int row, int column) => _dark[row, column];

    /// <summary>The dark modules as few rectangles (in modules, quiet zone counted), runs merged along and down.</summary>
    public IEnumerable<Box> DarkRectangles()
    {
        var taken = new bool[Modules, Modules];

        for (var row = 0; row < Modules; row++)
        {
            for (var column = 0; column < Modules; column++)
            {
                if (_dark[row, column] && !taken[row, column])
                {
                    yield return Grow(row, column, taken);
                }
            }
        }
    }

    private Box Grow(int row, int column, bool[,] taken)
    {
        var (end, bottom) = (column, row + 1);

        while (end < Modules && Free(row, end))
        {
            end++;
        }

        while (bottom < Modules && Enumerable.Range(column, end - column).All(x => Free(bottom, x)))
        {
            bottom++;
        }

        for (var y = row; y < bottom; y++)
        {
            for (var x = column; x < end; x++)
            {
                taken[y, x] = true;
            }
        }

        return new(column + QuietModules, row + QuietModules, end - column, bottom - row);

        bool Free(int y, int x) => _dark[y, x] && !taken[y, x];
    }

    // QRCoder hands out the matrix with the quiet zone around it.
    private static bool[,] Inner(List<System.Collections.BitArray> matrix)
    {
        var size = matrix.Count - (2 * QuietModules);
        var dark = new bool[size, size];

        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
            {
                dark[row, column] = matrix[row + QuietModules][column + QuietModules];
            }
        }

        return dark;
    }
}
