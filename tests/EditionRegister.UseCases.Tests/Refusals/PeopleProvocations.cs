using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class PeopleProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("name-missing", studio => studio.Register.RecordPerson.Run(new NewPerson { Name = " " })),
        new("person-known-already", studio => studio.Register.RecordPerson.Run(new NewPerson { Name = "mira tolland" })),
        new("public-name-unknown", studio => studio.Register.RecordPerson.Run(new NewPerson { Name = "Tam Birdseye", PublicName = "nickname" })),
        new("public-wording-missing", studio => studio.Register.RecordPerson.Run(new NewPerson { Name = "Tam Birdseye", PublicName = "wording" })),
        new("person-not-found", studio => studio.Register.Consign.Run(Studio.Pile(1, "3"), "Bay Gallery")),
        new("person-ambiguous", studio => studio.Register.Consign.Run(Studio.Pile(1, "3"), "Ada")),
        new("place-not-found", studio => studio.Register.PutAway.Run(Studio.Pile(1, "3"), "Attic")),
        new("place-ambiguous", studio => studio.Register.PutAway.Run(Studio.Pile(1, "3"), "Drawer 1")),
        new("place-missing", studio => studio.Register.RecordPlace.Run(" › ")),
        new("place-known-already", studio =>
        {
            var place = studio.Register.RecordPlace.Run("Attic › Shelf 1");
            studio.Register.RecordPlace.Run("Attic › Shelf 2");
            studio.Register.EditPlace.Run(place, new PlaceCorrection { Name = "shelf 2" });
        }),
        new("place-missing", studio => studio.Register.EditPlace.Run(1, new PlaceCorrection { Name = "Attic › Shelf" })),
        new("role-unknown", studio => studio.Register.RecordWork.Run(new() { Title = "Weir" }, ["1"], [new Contributor("inker", "2")])),
    ];
}
