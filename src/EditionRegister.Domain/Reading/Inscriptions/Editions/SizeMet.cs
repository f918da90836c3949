
namespace EditionRegister.Domain.Reading.Inscriptions.Editions;

/// <summary>A size or a copy's number that words announce: edition of 75, 25 impressions, set #116.</summary>
internal readonly record struct SizeMet(int Start, int Next)
{
    public int? Number { get; init; }

    public int? Of { get; init; }

    public string? Letter { get; init; }

    public bool IsRoman { get; init; }

    public SizeHedge Hedge { get; init; }

    public SizeBounds? Bounds { get; init; }

    /// <summary>The words say that there is no size: open, unlimited, unique.</summary>
    public bool IsOpen { get; init; }

    /// <summary>It could be meant otherwise, or leaves open which of two it is.</summary>
    public bool IsDoubtful { get; init; }

    public static SizeMet Sized(int start, SizeFigure size) => new(start, size.Next)
    {
        Of = size.Of,
        IsRoman = size.IsRoman,
        Hedge = size.Hedge,
        Bounds = size.Bounds,
        IsDoubtful = size.IsChoice,
    };
}
