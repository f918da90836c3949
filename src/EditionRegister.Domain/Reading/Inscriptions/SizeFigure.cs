namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>What a text says of how many there are, and the token after it.</summary>
internal readonly record struct SizeFigure(int Next)
{
    /// <summary>Null where it is a range, a bound, a choice, unlimited or a question mark.</summary>
    public int? Of { get; init; }

    public bool IsRoman { get; init; }

    public SizeHedge Hedge { get; init; }

    /// <summary>Between 75 and 100, at most 40.</summary>
    public SizeBounds? Bounds { get; init; }

    /// <summary>125-130, with nothing but a dash between.</summary>
    public bool IsRange { get; init; }

    /// <summary>100 or 135: nothing says which.</summary>
    public bool IsChoice { get; init; }

    public bool IsUnlimited { get; init; }

    public bool IsUnknown { get; init; }
}
