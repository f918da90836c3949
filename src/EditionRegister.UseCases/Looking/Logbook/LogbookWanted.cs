namespace EditionRegister.UseCases.Looking;

/// <summary>Which entries of the logbook to show; null asks for nothing.</summary>
public sealed record LogbookWanted
{
    /// <summary>Only entries below this one: where the page before ended.</summary>
    public long? Before { get; init; }

    public int Skip { get; init; }

    /// <summary>How many at most.</summary>
    public int Take { get; init; } = 100;

    /// <summary>The first day, in UTC as entries are written.</summary>
    public DateOnly? From { get; init; }

    /// <summary>The last day, itself included.</summary>
    public DateOnly? To { get; init; }

    /// <summary>Written by this person.</summary>
    public long? By { get; init; }

    /// <summary>On this one thing: "work/17".</summary>
    public string? Root { get; init; }

    /// <summary>Every word is found in what the entry is on: the title, a maker, a name, a place; case and accents make no difference. What is no more has no name.</summary>
    public string? Text { get; init; }
}

/// <summary>A page of the logbook, newest first.</summary>
/// <param name="Page">The entries.</param>
/// <param name="Next">What to ask for as <see cref="LogbookWanted.Before"/> to read on; null when that was all.</param>
/// <param name="All">How many entries the logbook has.</param>
public sealed record LogbookSeen(IReadOnlyList<EntryListed> Page, long? Next, long All);

/// <summary>One entry as a list shows it.</summary>
/// <param name="N">Its number.</param>
/// <param name="At">When it was written, UTC, ISO 8601.</param>
/// <param name="Deed">The deed's permanent word.</param>
/// <param name="DeedInWords">As a person says it: "pulls sorted".</param>
/// <param name="Root">What it is on: "work/17".</param>
/// <param name="Subject">The same in words: “Harbour” by Mira Tolland.</param>
/// <param name="By">Who wrote it, or null where nobody said.</param>
/// <param name="ByName">Their name.</param>
/// <param name="Batch">The batch it belongs to, or null.</param>
public sealed record EntryListed(long N, string At, string Deed, string DeedInWords, string Root, string Subject, long? By, string? ByName, long? Batch);
