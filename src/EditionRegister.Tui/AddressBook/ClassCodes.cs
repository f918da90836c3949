using System.Globalization;
using Book = EditionRegister.Domain.People.AddressBook;

namespace EditionRegister.Tui.AddressBook;

/// <summary>The codes of a class: the class, a dash, and a number of at least two digits.</summary>
internal static class ClassCodes
{
    /// <summary>The codes of a class that are given by now.</summary>
    public static IReadOnlyList<string> Of(Book book, string inClass) =>
        [.. book.People.Values.Select(person => person.ClassCode).OfType<string>().Where(code => NumberIn(code, inClass) is not null)];

    /// <summary>One above the highest, so that a code is never given to a second pupil.</summary>
    public static string Next(Book book, string inClass) =>
        string.Create(CultureInfo.InvariantCulture, $"{inClass}-{Of(book, inClass).Select(code => NumberIn(code, inClass)!.Value).DefaultIfEmpty().Max() + 1:00}");

    private static int? NumberIn(string code, string inClass) =>
        code.StartsWith(inClass + "-", StringComparison.OrdinalIgnoreCase) && int.TryParse(code[(inClass.Length + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
