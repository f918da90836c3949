namespace EditionRegister.Domain.Documents;

/// <summary>One fact a certificate states: its permanent key and the value in words; never blank.</summary>
public sealed record CertificateFact(string Key, string Value);
