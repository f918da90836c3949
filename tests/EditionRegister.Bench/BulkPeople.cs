using EditionRegister.Domain.Facts;
using EditionRegister.Store;

namespace EditionRegister.Bench;

/// <summary>Makers, galleries, buyers and places of a large register, with names as they come in the world: accents, other scripts, particles.</summary>
internal sealed class BulkPeople
{
    private static readonly string[] Given = ["Mira", "Óskar", "Ágota", "Ines", "Łucja", "Jürgen", "Thùy", "Søren", "Élodie", "Tomáš", "Nkem", "Yusuf", "澪", "하린", "Zoë", "Pádraig"];
    private static readonly string[] Family = ["Tolland", "Vargøy", "Brookesby", "Żurawek", "Ó Ceallan", "de la Marre", "Grünwaldt", "Nguyệt", "渡瀬", "서온", "Birdsey", "Çelebioğ", "Ferreirinha", "Åkerby", "Strakov", "Quillan"];

    public BulkPeople(RegisterStore store) => store.Write("record-person", writing =>
    {
        Makers = [.. Enumerable.Range(0, 200).Select(i => Person(writing.On, writing.NewId("person"), Name(i), "person"))];
        Galleries = [.. Enumerable.Range(0, 40).Select(i => Person(writing.On, writing.NewId("person"), $"{Family[i % 16]} Gallery {Roman(i / 16)}", "organisation"))];
        Buyers = [.. Enumerable.Range(0, 3_000).Select(i => Person(writing.On, writing.NewId("person"), $"{Name((i * 7) + 3)} {Suffix(i)}", "person"))];
        Drawers = [.. Rooms(writing)];

        return true;
    });

    public IReadOnlyList<long> Makers { get; private set; } = [];

    public IReadOnlyList<long> Galleries { get; private set; } = [];

    public IReadOnlyList<long> Buyers { get; private set; } = [];

    public IReadOnlyList<long> Drawers { get; private set; } = [];

    private static string Name(int i) => $"{Given[i % 16]} {Family[i / 16 % 16]}";

    private static string Suffix(int i) => FormattableString.Invariant($"{(char)('A' + (i % 26))}{i / 26}");

    private static string Roman(int i) => new('I', i + 1);

    private static long Person(Func<Root, Deed> on, long id, string name, string what)
    {
        on(Root.Person(id)).Set("person", id,
            ("what", what), ("name", name), ("sort_name", name.Split(' ', 2) is [var given, var family] && what == "person" ? $"{family}, {given}" : name),
            ("class_code", id % 9 == 0 ? FormattableString.Invariant($"{id % 5 + 7}B-{id}") : null),
            ("protected", "no"), ("public_name", "full"), ("erased", "no"));

        return id;
    }

    private static IEnumerable<long> Rooms(Store.Logbook.Writing writing)
    {
        foreach (var room in new[] { "Studio", "Attic", "École d’art", "石版室", "Fair store" })
        {
            var outer = Place(writing, room, inside: null);

            for (var chest = 1; chest <= 4; chest++)
            {
                var middle = Place(writing, FormattableString.Invariant($"Plan chest {chest}"), outer);

                for (var drawer = 1; drawer <= 12; drawer++)
                {
                    yield return Place(writing, FormattableString.Invariant($"Drawer {drawer}"), middle);
                }
            }
        }
    }

    private static long Place(Store.Logbook.Writing writing, string name, long? inside)
    {
        var id = writing.NewId("place");
        writing.On(Root.Place(id)).Set("place", id, ("name", name), ("inside", inside));

        return id;
    }
}
