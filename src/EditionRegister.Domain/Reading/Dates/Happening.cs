namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Something a text says has happened, with the dates it gives for it.</summary>
internal sealed class Happening(string word, bool isOfImage, bool isOfAnother, string? when)
{
    public string Word => word;

    public bool IsOfImage => isOfImage;

    /// <summary>The date is an original's, after which this was made.</summary>
    public bool IsOfAnother => isOfAnother;

    /// <summary>Later, posthumously; null where nothing of the kind is said.</summary>
    public string? When => when;

    public List<DateSaid> Dates { get; } = [];

    public DatedEvent? Event => Dates.Count > 0 ? DatedEvent.Of(word, DatesTogether.Listed(Dates)) : when is null ? null : new DatedEvent(word, null, null, null, when);
}
