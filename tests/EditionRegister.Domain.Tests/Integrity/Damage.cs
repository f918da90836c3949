using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

/// <summary>A work in which nothing is as the schema would have it.</summary>
internal static class Damage
{
    public static Work Everywhere()
    {
        RecordedDate date = new("\uD800", "yesterday", "2026-02-31");
        var work = Harbour.Clean();

        return work with
        {
            Title = null,
            TitleState = "",
            MakerState = "İ",
            Year = date,
            Roles = [new(1, 99, "", -1)],
            Matrices = [new(5, 1, "", null, "", date, "", date, null)],
            Runs = [new(7, 1, int.MinValue, "", null, null, date, int.MaxValue, int.MinValue, int.MaxValue, -1, long.MinValue, 0, long.MaxValue, -1, null)],
            Editions =
            [
                new(9, 1, 0, "", "whole", -1, date, "yes", date, null,
                [
                    new(21, 1, 0, "?", "?", int.MaxValue, "", [new(1, 1, int.MinValue, "", null), new(2, 1, int.MaxValue, "open", null)]),
                    new(22, 1, 0, "numbered", "none", int.MaxValue, "open", [new(3, 1, 0, "open", null), new(4, 1, 0, "open", null)]),
                    new(23, 1, 0, "artists-proof", "roman", int.MinValue, "stated", []),
                    new(24, 1, 0, "trial", "letters", null, "stated", []),
                ]),
                new(10, 1, 0, "open", "?", null, date, "?", date, null, []),
            ],
            Impressions =
            [
                .. from numbering in new long?[] { null, 21, 22, 23, 24, 77 }
                   from number in new int?[] { null, int.MinValue, 0, 1, int.MaxValue }
                   from pencilled in new[] { null, "", "13/12", "A/P", "3/12", "\uD800" }
                   select Broken(numbering, number, pencilled, date),
            ],
            Book = new AddressBook(new Dictionary<long, Person>(), new Dictionary<long, Place> { [1] = new(1, 1, null, 1, 5, null) }),
        };
    }

    private static Impression Broken(long? numbering, int? number, string? pencilled, RecordedDate date) => new()
    {
        Id = 1,
        V = 0,
        Run = pencilled is null ? 7 : 70,
        Ordinal = -1,
        Code = "",
        Standing = number is null ? "left-out" : "",
        Fault = "",
        Numbering = numbering,
        Number = number,
        Pencilled = pencilled,
        Titled = pencilled,
        Signed = "",
        ForSale = "",
        Asking = long.MinValue,
        AskingCurrency = null,
        Inscriptions = [new(1, 0, "", "", null, null)],
        Whereabouts = [new(1, 1, 5, "", new Position("", 9, 9), new Position("placed", null, 9), date, date, -5, null), new(1, 1, 5, "found", null, new Position("gone", 1, null), date, date, null, null), new(1, 1, int.MinValue, "sold", Position.Gone, new Position("with", null, null), date, date, null, null)],
        Ownership = [new(1, 1, 5, "", Owner.Unknown, new Owner("known", null), 9, date, -1, -1, "", null), new(1, 1, 0, "sold", new Owner("known", 9), new Owner("known", 9), 9, date, null, null, "EUR", null)],
        Documents = [new(1, 1, "certificate", "", date, "valid", null, "{"), new(2, 1, "certificate", "", date, "valid", 1, null), new(3, 1, "", "", date, "", 3, "[]")],
        KeptColumns = [],
    };
}
