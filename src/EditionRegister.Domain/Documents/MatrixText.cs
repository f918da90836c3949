using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Documents;

/// <summary>When the matrices of a work were made and what became of them, as certificates say it.</summary>
internal static class MatrixText
{
    private const string NoMore = "; no further impressions can be made";
    private const string NotYet = "not yet cancelled";

    /// <summary>What the work was printed from, to stand before a value: "Block", "Plates", "Block and plate"; "Matrix" where none is recorded.</summary>
    public static string Heading(IReadOnlyList<Matrix> matrices)
    {
        var words = matrices.CountBy(matrix => matrix.Called).Select(same => same.Value == 1 ? same.Key : same.Key == "matrix" ? "matrices" : same.Key + "s").ToList();
        var heading = words.Count == 0 ? "matrix" : string.Join(" and ", words);

        return char.ToUpperInvariant(heading[0]) + heading[1..];
    }

    public static string Years(IReadOnlyList<Matrix> matrices) =>
        matrices.Count == 0 ? CertificateFacts.NotKnown : string.Join(", ", matrices.Select(matrix => CertificateFacts.Date(matrix.Made)).Distinct());

    public static string Fates(IReadOnlyList<Matrix> matrices) => matrices.Count == 0
        ? CertificateFacts.NotKnown
        : string.Join("; ", matrices.GroupBy(Ended).Select(same => $"{Several(same.Key.Called, same.Count())} {same.Key.Fate}"))
            + (matrices.Any(IsNoMore) ? NoMore : "");

    /// <summary>What a certificate said was still to be decided may have been decided since, and both were true.</summary>
    public static bool IsStillOpen(string value) => value.Contains(NotYet, StringComparison.Ordinal) || value.Contains(CertificateFacts.NotKnown, StringComparison.Ordinal);

    private static CalledFate Ended(Matrix matrix) => new(matrix.Called, Fate(matrix));

    private static string Several(string called, int count) => count == 1 ? called
        : $"{InWords.Figure(count)} {(called == "matrix" ? "matrices" : called + "s")}";

    private static string Fate(Matrix matrix) => Words(matrix) + (matrix.Fate is not "undecided" and not "unknown" && matrix.FateDate.IsKnown ? $" ({DateInWords.Of(matrix.FateDate)})" : "");

    private static string Words(Matrix matrix) => matrix.Fate switch
    {
        "undecided" => NotYet,
        "cut-away-in-printing" => "cut away in printing",
        "cancelled" => "cancelled",
        "kept-uncancelled" => "kept uncancelled",
        "regrained-or-reclaimed" => matrix.What switch { "stone" => "regrained", "screen" => "reclaimed", _ => "regrained or reclaimed" },
        "cut-up" => "cut up",
        "lost" => "lost",
        "given-away" => "given away",
        _ => $"of which it is {CertificateFacts.NotKnown} what became",
    };

    private static bool IsNoMore(Matrix matrix) => matrix.Fate is "cut-away-in-printing" or "cut-up" or "regrained-or-reclaimed";

    /// <summary>Matrices called alike that came to the same end are told together.</summary>
    private sealed record CalledFate(string Called, string Fate);
}
