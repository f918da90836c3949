namespace EditionRegister.UseCases.Looking;

/// <summary>Which impressions a list is to show; null asks for nothing.</summary>
public sealed record ImpressionsWanted
{
    /// <summary>Every one of these is found in title, maker, code, place, year or technique; a number, a date or a technique among them is met however it is recorded.</summary>
    public IReadOnlyList<string> Texts { get; init; } = [];

    /// <summary>A part of the maker's name, or their number.</summary>
    public string? Maker { get; init; }

    /// <summary>A place, and every place in it.</summary>
    public string? Place { get; init; }

    /// <summary>pulled, kept, spare, left-out or held-out.</summary>
    public string? Standing { get; init; }

    public long? Work { get; init; }

    public long? Edition { get; init; }

    public int Skip { get; init; }

    /// <summary>How many at most.</summary>
    public int? Take { get; init; }
}
