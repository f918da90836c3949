using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>Grams per square metre from pounds: the weight of a ream of 500 sheets of a basis size.</summary>
public static class Grammage
{
    // A pound is 453.59237 g by definition; a ream of paper sold by the pound has 500 sheets.
    private const decimal GramsInAPound = 453.59237m;
    private const decimal SheetsInAReam = 500m;
    private const decimal SquareMicrometres = 1_000_000_000_000m;

    /// <summary>In hundredths of g/m², rounded.</summary>
    /// <param name="pounds">In hundredths.</param>
    /// <param name="basis">The size of sheet that the pounds are counted for.</param>
    public static int FromPounds(int pounds, Size basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        var area = basis.Height.Micrometres * (decimal)basis.Width.Micrometres / SquareMicrometres;

        return (int)Math.Min(int.MaxValue, Math.Round(pounds * GramsInAPound / SheetsInAReam / area, MidpointRounding.AwayFromZero));
    }
}
