using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>How heavy a paper is said to be: in grams per square metre, in pounds for a basis size, or in both.</summary>
public sealed record PaperWeight
{
    /// <summary>Hundredths of g/m² as written; null where only pounds are.</summary>
    public int? GramsWritten { get; init; }

    /// <summary>Hundredths of a pound, as written; null where only grams are.</summary>
    public int? Pounds { get; init; }

    /// <summary>The sheet that the pounds are counted for; null where nobody says.</summary>
    public Size? Basis { get; init; }

    /// <summary>The grade of paper that fixes the basis, where it is not written in figures: bond, cover, text, offset, book.</summary>
    public string? BasisWord { get; init; }

    /// <summary>Hundredths of g/m²: as written, else worked out from pounds and basis; null where the basis is not known.</summary>
    public int? Grams => GramsWritten ?? (Pounds is { } pounds && Basis is { } basis ? Grammage.FromPounds(pounds, basis) : null);

    public bool IsWorkedOut => GramsWritten is null && Grams is not null;

    /// <summary>Why there are no grams; null where there are.</summary>
    public string? WhyNoGrams => Grams is null ? "the size of sheet that the pounds are counted for is not written, as in 140 lb (22 x 30 in)" : null;
}
