using EditionRegister.Domain.Integrity;

namespace EditionRegister.UseCases.Looking;

/// <summary>Where what a finding is about lies: its work, and its edition or its code where it has one.</summary>
public sealed record SubjectPlace(long? Work, long? Edition, string? Code);

public sealed partial class LookAround
{
    /// <summary>Where something of a work lies; null where it is nothing of a work, or is no more.</summary>
    public SubjectPlace? PlaceOf(Subject subject) => store.Read(reader =>
        reader.PlaceOfSubject(subject.Kind, subject.Id) is { } place ? new SubjectPlace(place.Work, place.Edition, place.Code) : null);

    /// <summary>Which of these batches read in a file and were not undone since.</summary>
    public IReadOnlySet<long> StandingBatches(IEnumerable<long> batches) => store.Read(reader => batches.Distinct().Where(batch => reader.StandingBatch(batch) is not null).ToHashSet());
}
