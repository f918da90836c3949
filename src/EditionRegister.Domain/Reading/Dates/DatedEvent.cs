namespace EditionRegister.Domain.Reading.Dates;

/// <summary>Something a text says beside the date of a thing: printed 1977, negative 1950, printed later, original 1836.</summary>
/// <param name="Word">What happened, in English and in one form for all ways to say it; "in brackets" where no word says it.</param>
/// <param name="Edtf">When, in the Extended Date/Time Format; null where no date is said.</param>
/// <param name="Earliest">The first year; null where nobody can say.</param>
/// <param name="Latest">The last year; null where nobody can say.</param>
/// <param name="When">"later" or "posthumously" where that is said; null where it is not.</param>
public sealed record DatedEvent(string Word, string? Edtf, int? Earliest, int? Latest, string? When)
{
    internal static DatedEvent Of(string word, DateSaid date) => new(word, date.Edtf, date.Earliest, date.Latest, null);
}
