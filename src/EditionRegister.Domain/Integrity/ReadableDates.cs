using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Dates whose first and last day cannot be read, or do not belong together.</summary>
internal static class ReadableDates
{
    public static IEnumerable<Unreadable> Of(Work work) =>
    [
        .. Date(work.AsSubject(), "year", work.Year),
        .. work.Matrices.SelectMany(matrix => Date(work.SubjectOf(matrix), "date of making", matrix.Made).Concat(Date(work.SubjectOf(matrix), "date of its fate", matrix.FateDate))),
        .. work.Runs.SelectMany(run => Date(work.SubjectOf(run), "date of printing", run.Printed)),
        .. work.Editions.SelectMany(edition => Date(work.SubjectOf(edition), "date of declaring", edition.Declared).Concat(Date(work.SubjectOf(edition), "date of closing", edition.ClosedOn))),
        .. work.Impressions.SelectMany(sheet => OfSheet(work.SubjectOf(sheet), sheet)),
    ];

    private static IEnumerable<Unreadable> OfSheet(Subject subject, Impression sheet) =>
    [
        .. sheet.Whereabouts.SelectMany(link => Date(subject, "date of a move", link.Moved).Concat(Date(subject, "end of a consignment", link.Until))),
        .. sheet.Ownership.SelectMany(link => Date(subject, "date of a transfer", link.Passed)),
        .. sheet.Documents.SelectMany(document => Date(subject, $"date of {document.Serial}", document.Issued)),
    ];

    private static IEnumerable<Unreadable> Date(Subject subject, string what, RecordedDate date)
    {
        if ((date.EarliestText is not null && date.Earliest is null) || (date.LatestText is not null && date.Latest is null))
        {
            yield return new(subject, $"The {what} of {subject} ({date}) is bounded by {date.EarliestText ?? "nothing"} and {date.LatestText ?? "nothing"}, and one of them is no day.");
        }
        else if (date.Latest < date.Earliest)
        {
            yield return new(subject, $"The {what} of {subject} ({date}) ends {date.LatestText}, before it begins {date.EarliestText}.");
        }
        else if (!date.IsKnown && (date.EarliestText ?? date.LatestText) is { } bound)
        {
            yield return new(subject, $"The {what} of {subject} is bounded by {bound}, and says nothing itself.");
        }
    }
}
