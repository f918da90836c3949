using EditionRegister.Domain.People;

namespace EditionRegister.UseCases.Wording;

/// <summary>What is said once people and places are recorded or put right.</summary>
public static class AddressBookSaid
{
    /// <summary>The usual caution wherever pupils are recorded.</summary>
    public const string AboutPupils = "Keep no more about a pupil than the work needs; what may be shown, and who has agreed to it, is for your school's policy and local law to say.";

    public static string Recorded(Person person) => $"{person.FullName} recorded as person {Counted.Figure(person.Id)}; in public “{person.PublicText}”.";

    public static string PutRight(Person person) => $"Person {Counted.Figure(person.Id)} put right: {person.FullName}, in public “{person.PublicText}”.";

    public static string PlaceRecorded(long id, string path, bool isNew) =>
        isNew ? $"Place {Counted.Figure(id)} recorded: {path}." : $"{path} was recorded before, as place {Counted.Figure(id)}; nothing was changed.";

    public static string PlacePutRight(long id, string path) => $"Place {Counted.Figure(id)} put right: {path}.";

    /// <summary>How much of a name a policy shows, for those who meet its word for the first time.</summary>
    public static string Shows(string policy) =>
        !PublicNamePolicy.TryFind(policy, out var known) ? "nothing of the name, since this way is not known"
        : known == PublicNamePolicy.Full ? "the whole name"
        : known == PublicNamePolicy.Given ? "the given names alone"
        : known == PublicNamePolicy.GivenAndInitial ? "the given names and the first letter of the family name"
        : known == PublicNamePolicy.Initials ? "first letters alone"
        : known == PublicNamePolicy.ClassCode ? "the code that only the class can resolve"
        : known == PublicNamePolicy.Wording ? "these words instead of the name"
        : "nothing of the name";
}
