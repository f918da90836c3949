using EditionRegister.Domain.Planning;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Planning;

/// <summary>Pieces out of full sheets: by ISO 216, and by counting squares.</summary>
public sealed class PaperPiecesTests
{
    // ISO 216: each size is the one before with its long side halved and rounded down, so a sheet holds 2, 4, 8 and 16 of those below it.
    [Theory]
    [InlineData("841x1189", "594x841", 2)]
    [InlineData("841x1189", "420x594", 4)]
    [InlineData("841x1189", "297x420", 8)]
    [InlineData("841x1189", "210x297", 16)]
    [InlineData("420x594", "297x420", 2)]
    [InlineData("420x594", "210x297", 4)]
    [InlineData("594x420", "210x148", 8)]
    [InlineData("1000x1414", "353x500", 8)]
    public void A_size_of_the_series_is_halved_again_and_again(string paper, string piece, int pieces) =>
        Assert.Equal(pieces, Of(paper, piece).PerSheet);

    // 560 x 760 with the grain along the 760: pieces of 280 x 380 lie 2 by 2 with their long side along it, 1 by 2 with their short side.
    [Fact]
    public void The_grain_says_which_way_the_pieces_lie()
    {
        var along = Of("560x760", "280x380", pieceGrain: "long");
        var across = Of("560x760", "280x380", pieceGrain: "short");

        Assert.Equal((4, false), (along.PerSheet, along.IsTurned));
        Assert.Equal((2, true), (across.PerSheet, across.IsTurned));
        Assert.Equal(4, Of("560x760", "280x380", sheetGrain: "short", pieceGrain: "short").PerSheet);
    }

    [Fact]
    public void A_square_piece_takes_the_grain_either_way() =>
        Assert.Equal((6, 6), (Of("560x760", "250x250", pieceGrain: "long").PerSheet, Of("560x760", "250x250", pieceGrain: "short").PerSheet));

    // 10 mm off each edge leave 540 x 740: 540 / 280 = 1 row of 740 / 380 = 1; turned, 540 / 380 = 1 row of 740 / 280 = 2.
    [Fact]
    public void What_is_trimmed_off_is_lost_to_the_pieces() =>
        Assert.Equal((2, true), (Of("560x760", "280x380", trim: 10_000).PerSheet, Of("560x760", "280x380", trim: 10_000).IsTurned));

    // 3 rows of 3: the one in the middle has no deckle edge. 2 rows of 4: every one has.
    [Theory]
    [InlineData("600x600", "200x200", 8)]
    [InlineData("560x760", "250x180", 8)]
    public void Only_pieces_at_an_edge_keep_a_deckle(string paper, string piece, int pieces) =>
        Assert.Equal(pieces, Of(paper, piece, keepsDeckle: true).PerSheet);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(4, 1)]
    [InlineData(5, 2)]
    [InlineData(26, 7)]
    public void Whole_sheets_are_bought(int pieces, int sheets) => Assert.Equal(sheets, Of("560x760", "280x380").SheetsFor(pieces));

    private static PaperPieces Of(string paper, string piece, string sheetGrain = "long", string? pieceGrain = null, long trim = 0, bool keepsDeckle = false)
    {
        Assert.True(Size.TryParseMillimetres(paper, out var sheet));
        Assert.True(Size.TryParseMillimetres(piece, out var printed));

        return PaperPieces.Of(sheet, printed, sheetGrain, pieceGrain, trim, keepsDeckle);
    }
}
