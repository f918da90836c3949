using EditionRegister.Domain.Editions;

namespace EditionRegister.Domain.Integrity;

/// <summary>A numbering with the edition it belongs to.</summary>
internal sealed record NumberingPlace(Edition Edition, Numbering Numbering);
