namespace EditionRegister.UseCases.Moves;

/// <summary>People of a sale as a person names them; null is not said, and for the buyer not known.</summary>
public sealed record SalePeople(string? Buyer, string? Seller = null, string? Agent = null);
