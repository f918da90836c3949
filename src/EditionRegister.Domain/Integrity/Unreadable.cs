namespace EditionRegister.Domain.Integrity;

/// <summary>A value as found that nothing can be made of.</summary>
internal sealed record Unreadable(Subject Subject, string Message);
