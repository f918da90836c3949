using EditionRegister.Domain;
using EditionRegister.Tui.Asking;
using EditionRegister.UseCases;
using EditionRegister.UseCases.People;

namespace EditionRegister.Tui.Bench;

/// <summary>People and places as forms name them, several parted by semicolons; new ones are recorded only where that was said.</summary>
internal static class Naming
{
    public const string Known = "known";
    public const string New = "new";
    public const string NewPupil = "new, a pupil";

    public static IReadOnlyList<string> Split(string? answer) =>
        (answer ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>A field for several names: what is known is offered for the one that is being typed.</summary>
    public static Field People(string label, IReadOnlyList<string> known, bool isNeeded = false) => new(label)
    {
        Form = "as written: Mira Tolland; several parted by a semicolon",
        IsNeeded = isNeeded,
        Known = typed =>
        {
            var before = typed.LastIndexOf(';') + 1;
            var lead = before == 0 ? "" : typed[..before] + " ";

            return [.. Fields.Matching(known, typed[before..].TrimStart()).Select(name => lead + name)];
        },
    };

    /// <summary>Records those the address book does not have, where the form said that they are new.</summary>
    public static void RecordNew(Register register, IReadOnlyList<string> names, string? who)
    {
        if (who is not (New or NewPupil))
        {
            return;
        }

        var book = register.LookAround.Book();

        foreach (var name in names.Where(name => !IsKnown(() => Persons.Find(book, name))))
        {
            register.RecordPerson.Run(new NewPerson { Name = name, IsProtected = who == NewPupil });
        }
    }

    /// <summary>Records a place the register does not have, where the form said that it is new.</summary>
    public static void RecordNewPlace(Register register, string? place, string? which)
    {
        if (place is not null && which == New && !IsKnown(() => Places.Find(register.LookAround.Book(), place)))
        {
            register.RecordPlace.Run(place);
        }
    }

    private static bool IsKnown(Func<long> find)
    {
        try
        {
            find();

            return true;
        }
        catch (RefusedException refusal) when (refusal.Name is "person-not-found" or "place-not-found")
        {
            return false;
        }
    }
}
