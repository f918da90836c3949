namespace EditionRegister.Domain.Documents;

/// <summary>One fact as printed: a permanent key that checks compare by, the label a reader sees, and the value.</summary>
public sealed record StatementLine(string Key, string Label, string Value);
