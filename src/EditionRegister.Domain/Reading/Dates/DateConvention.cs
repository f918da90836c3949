namespace EditionRegister.Domain.Reading.Dates;

/// <summary>One line of the table of conventions.</summary>
/// <param name="Written">An example of what is written.</param>
/// <param name="Read">How it is read, as a person is told.</param>
/// <param name="Why">The reason, with its source where there is one.</param>
public sealed record DateConvention(string Written, string Read, string Why);
