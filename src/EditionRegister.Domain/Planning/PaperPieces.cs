using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Planning;

/// <summary>How the pieces to print on are got out of full sheets: in rows and columns, all lying the same way, whichever way gives more.</summary>
public sealed record PaperPieces
{
    /// <summary>Along the sheet's height.</summary>
    public int Rows { get; private init; }

    /// <summary>Along the sheet's width.</summary>
    public int Columns { get; private init; }

    /// <summary>The pieces lie across the sheet: their height along its width.</summary>
    public bool IsTurned { get; private init; }

    /// <summary>Pieces out of one full sheet.</summary>
    public int PerSheet { get; private init; }

    /// <summary>Whole sheets to buy for so many pieces.</summary>
    public int SheetsFor(int pieces) => (pieces + PerSheet - 1) / PerSheet;

    /// <param name="paper">The full sheet.</param>
    /// <param name="piece">One piece.</param>
    /// <param name="sheetGrain">long or short: along which side of the full sheet the grain runs.</param>
    /// <param name="pieceGrain">long or short: along which side of a piece it is to run; null where it does not matter.</param>
    /// <param name="trim">What is cut off each edge of the full sheet, in micrometres.</param>
    /// <param name="keepsDeckle">Only pieces that keep a deckle edge count: those at an edge of the sheet.</param>
    /// <exception cref="RefusedException">piece-does-not-fit, or deckle-is-trimmed.</exception>
    public static PaperPieces Of(Size paper, Size piece, string sheetGrain, string? pieceGrain, long trim, bool keepsDeckle)
    {
        if (keepsDeckle && trim > 0)
        {
            throw PlanRefusals.DeckleTrimmed();
        }

        var best = new[] { Lying(paper, piece, trim, keepsDeckle, isTurned: false), Lying(paper, piece, trim, keepsDeckle, isTurned: true) }
            .Where(way => pieceGrain is null || piece.Height == piece.Width || GrainRuns(paper, piece, sheetGrain, way.IsTurned) == pieceGrain)
            .MaxBy(way => way.PerSheet);

        return best is { PerSheet: > 0 } ? best : throw PlanRefusals.DoesNotFit(paper, piece, pieceGrain is not null);
    }

    private static PaperPieces Lying(Size paper, Size piece, long trim, bool keepsDeckle, bool isTurned)
    {
        var (height, width) = isTurned ? (piece.Width, piece.Height) : (piece.Height, piece.Width);
        var rows = (int)(Math.Max(0, paper.Height.Micrometres - (2 * trim)) / height.Micrometres);
        var columns = (int)(Math.Max(0, paper.Width.Micrometres - (2 * trim)) / width.Micrometres);
        var inside = keepsDeckle ? Math.Max(0, rows - 2) * Math.Max(0, columns - 2) : 0;

        return new PaperPieces { Rows = rows, Columns = columns, IsTurned = isTurned, PerSheet = (rows * columns) - inside };
    }

    /// <summary>Along which side of a piece the grain of the sheet runs.</summary>
    private static string GrainRuns(Size paper, Size piece, string sheetGrain, bool isTurned)
    {
        var alongHeight = (paper.Height.Micrometres >= paper.Width.Micrometres) == (sheetGrain == "long");
        var alongPieceHeight = alongHeight != isTurned;

        return (piece.Height.Micrometres >= piece.Width.Micrometres) == alongPieceHeight ? "long" : "short";
    }
}
