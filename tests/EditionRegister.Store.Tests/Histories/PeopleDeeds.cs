using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>People, places and the growing lists.</summary>
internal sealed class PeopleDeeds(Known known, Draw draw)
{
    public Action<Writing>? AddPerson() => writing =>
    {
        var id = writing.On(Root.Register).NewId("person");
        Describe(writing.On(Root.Person(id)), id);
        known.People.Add(new KnownPerson(id));
    };

    public Action<Writing>? EditPerson() => known.Standing.Any() ? writing =>
    {
        var id = draw.Of(known.Standing.ToList()).Id;
        Describe(writing.On(Root.Person(id)), id);
    } : null;

    public Action<Writing>? NotePerson() => known.Standing.Any() ? writing =>
    {
        var id = draw.Of(known.Standing.ToList()).Id;
        writing.On(Root.Person(id)).Set("person", id, ("note", draw.TextOrNull()));
    } : null;

    public Action<Writing>? ErasePerson() => known.Standing.Count() > 3 ? writing =>
    {
        var person = draw.Of(known.Standing.ToList());
        var deed = writing.On(Root.Person(person.Id));
        deed.Set("person", person.Id, ("erased", "yes"));
        deed.Erase("person", person.Id);
        person.Erased = true;
    } : null;

    /// <summary>Many at once, a root each, under one batch: a class of pupils.</summary>
    public Action<Writing>? AddClass() => writing =>
    {
        for (var pupil = 0; pupil < draw.Between(2, 5); pupil++)
        {
            AddPerson()!(writing);
        }
    };

    public Action<Writing>? AddPlace() => writing =>
    {
        var id = writing.On(Root.Register).NewId("place");
        DescribePlace(writing.On(Root.Place(id)), id);
        known.Places.Add(id);
    };

    public Action<Writing>? EditPlace() => known.Places.Count > 0 ? writing =>
    {
        var id = draw.Of(known.Places);
        DescribePlace(writing.On(Root.Place(id)), id);
    } : null;

    public Action<Writing>? ErasePlace() => known.Places.Count > 5 ? writing =>
    {
        var id = draw.Of(known.Places);
        writing.On(Root.Place(id)).Erase("place", id);
    } : null;

    public Action<Writing>? GrowLists() => writing =>
    {
        var deed = writing.On(Root.Register);
        var kind = draw.Word("kind");
        var inSize = draw.YesNo();
        deed.Set("numbering_kind", deed.NewId("numbering_kind"),
            ("word", kind), ("mark", draw.Text()), ("name", draw.Text()), ("in_size", inSize), ("in_total", draw.YesNo()), ("for_sale", draw.YesNo()));
        known.Kinds.Add((kind, inSize == "yes"));
        var role = draw.Word("role");
        deed.Set("role", deed.NewId("role"), ("word", role), ("name", draw.Text()));
        known.Roles.Add(role);
        var fault = draw.Word("fault");
        deed.Set("fault", deed.NewId("fault"), ("word", fault), ("name", draw.Text()));
        known.Faults.Add(fault);
        var technique = draw.Word("technique");
        deed.Set("technique", deed.NewId("technique"), ("word", technique), ("name", draw.Text()), ("aat", draw.TextOrNull()));
        known.Techniques.Add(technique);
        var move = draw.Word("move");
        deed.Set("move_kind", deed.NewId("move_kind"), ("word", move), ("name", draw.Text()), ("chain", "whereabouts"), ("leaves", "no"));
        known.Moves.Add((move, false));
    };

    private void Describe(Deed deed, long id) => deed.Set(
        "person", id,
        ("what", draw.Of("person", "organisation")), ("name", draw.Text()), ("sort_name", draw.TextOrNull()), ("protected", draw.YesNo()),
        ("public_name", draw.Of("full", "given", "given-and-initial", "initials", "class-code", "unnamed", "wording")),
        ("public_wording", draw.TextOrNull()), ("class_code", draw.TextOrNull()), ("contact", draw.TextOrNull()), ("note", draw.TextOrNull()), ("erased", "no"));

    private void DescribePlace(Deed deed, long id)
    {
        // Only into an older place, so that no place comes to lie in itself.
        var outer = known.Places.Where(place => place < id).ToList();
        deed.Set(
            "place", id,
            ("name", draw.Text()), ("inside", outer.Count > 0 && draw.Chance(70) ? draw.Of(outer) : FactValue.Null),
            ("keeper", known.People.Count > 0 && draw.Chance(40) ? draw.Of(known.People).Id : FactValue.Null), ("note", draw.TextOrNull()));
    }
}
