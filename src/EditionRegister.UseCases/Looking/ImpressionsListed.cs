using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.Looking;

/// <summary>A page of a list, how many there are to page through, and how many the register has in all.</summary>
public sealed record ImpressionsListed(IReadOnlyList<ImpressionListed> Page, int Found, int All)
{
    /// <summary>What was looked for, as it was understood.</summary>
    public Sought Sought { get; init; } = Sought.Everything;
}

/// <summary>One impression of a list, with its work.</summary>
public sealed record ImpressionListed(Work Work, Impression Impression);
