namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Every size a text gives, in its order, and what looks like one and could not be read.</summary>
public sealed record SizesRead(IReadOnlyList<Measured> Sizes, IReadOnlyList<SizeDeclined> Declined)
{
    internal static SizesRead None { get; } = new([], []);

    /// <summary>Why something that looks like a size was not read; null where nothing was left out.</summary>
    public string? WhyNot => Declined.Count > 0 ? Declined[0].WhyNot : null;

    /// <summary>How it was read, in a line to stand beside a field while one types; empty where there is nothing of a size.</summary>
    public string Explain() => string.Join("; ", Sizes.Select(size => size.Explain()).Concat(Declined.Select(declined => declined.WhyNot)));
}
