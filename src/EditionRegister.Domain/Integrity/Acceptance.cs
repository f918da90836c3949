using EditionRegister.Domain.Dates;

namespace EditionRegister.Domain.Integrity;

/// <summary>That a finding was accepted with a reason: it stays on record and counts no more, until its facts change.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Reason">Why it may stand, in a person's words.</param>
/// <param name="On">When it was accepted.</param>
/// <param name="By">Who accepted it, or null where nobody was named.</param>
public sealed record Acceptance(long Id, string Reason, RecordedDate On, string? By);
