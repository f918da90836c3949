using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Things that point at what the register does not have.</summary>
internal static class ReadableLinks
{
    public static IEnumerable<Unreadable> Of(Work work) =>
    [
        .. work.Roles.Where(role => work.Book.Person(role.Person) is null)
            .Select(role => new Unreadable(work.AsSubject(), $"The {Role.Of(role.Role)?.Name ?? role.Role} of {work.Called} is person {InWords.Figure(role.Person)}, whom the register does not have.")),
        .. Makers(work),
        .. work.Impressions.SelectMany(sheet => OfSheet(work, work.SubjectOf(sheet), sheet)),
    ];

    private static IEnumerable<Unreadable> Makers(Work work)
    {
        var named = work.Roles.Any(role => role.Role == Role.Maker.Word);

        if (work.MakerState == "named" && !named)
        {
            yield return new(work.AsSubject(), $"The maker of {work.Called} is recorded as named, and nobody is named.");
        }
        else if (work.MakerState == "unknown" && named)
        {
            yield return new(work.AsSubject(), $"The maker of {work.Called} is recorded as unknown, and somebody is named.");
        }
    }

    private static IEnumerable<Unreadable> OfSheet(Work work, Subject subject, Impression sheet)
    {
        if (work.RunOf(sheet) is null)
        {
            yield return new(subject, $"{subject} was pulled in print run {InWords.Figure(sheet.Run)}, which {work.Called} does not have.");
        }

        if (sheet.Numbering is { } numbering && work.NumberingOf(sheet) is null)
        {
            yield return new(subject, $"{subject} has a place in numbering {InWords.Figure(numbering)}, which {work.Called} does not have.");
        }
        else if (sheet is { Numbering: null, Number: { } number })
        {
            yield return new(subject, $"{subject} is given number {InWords.Figure(number)} of no numbering.");
        }
    }
}
