namespace EditionRegister.Domain.Facts;

/// <summary>
/// Every table and fact the register keeps, in the order in which rows may be made. One catalogue drives writing, replay,
/// erasure and the tests that change one value at a time.
/// </summary>
public static partial class FactCatalogue
{
    public static IReadOnlyList<FactTable> Tables { get; } = Number((Since: 1,
    [
        ("register", [Text("uid"), Whole("schema"), Text("demo")]),
        ("numbering_kind", [Text("word"), Text("mark"), Text("name"), Text("in_size"), Text("in_total"), Text("for_sale")]),
        ("role", [Text("word"), Text("name")]),
        ("fault", [Text("word"), Text("name")]),
        ("move_kind", [Text("word"), Text("name"), Text("chain"), Text("leaves")]),
        ("person",
        [
            Text("what"), Sealed("name"), Sealed("sort_name"), Text("protected"), Text("public_name"), Sealed("public_wording"),
            Sealed("class_code"), Sealed("contact"), Sealed("note"), Text("erased"), Derived("search", "name", "sort_name", "class_code"),
        ]),
        ("place", [Sealed("name"), Whole("inside"), Whole("keeper"), Sealed("note"), Derived("search", "name")]),
        ("work",
        [
            Sealed("title"), Text("title_state"), Text("maker_state"), .. Date("year"), Text("technique"), Sealed("note"),
            Derived("search", "title"),
        ]),
        ("work_role", [Whole("work"), Whole("person"), Text("role"), Whole("ordinal")]),
        ("matrix",
        [
            Whole("work"), Text("what"), Text("material"), Text("reduction"), .. Date("made"), Text("fate"),
            Text("fate_date"), Text("fate_earliest"), Text("fate_latest"), Sealed("fate_note"),
        ]),
        ("print_run",
        [
            Whole("work"), Whole("ordinal"), Text("purpose"), Text("paper"), Text("state"), .. Date("printed"),
            Whole("started"), Whole("spoiled"), Whole("unused"), Whole("held_out"),
            Whole("image_height"), Whole("image_width"), Whole("sheet_height"), Whole("sheet_width"), Sealed("note"),
        ]),
        ("edition",
        [
            Whole("work"), Whole("ordinal"), Text("kind"), Text("extent"), Whole("intended"), .. Date("declared"),
            Text("closed"), Text("closed_on"), Text("closed_earliest"), Text("closed_latest"), Sealed("note"),
        ]),
        ("numbering", [Whole("edition"), Whole("ordinal"), Text("kind"), Text("notation"), Whole("size"), Text("size_state")]),
        ("number", [Whole("numbering"), Whole("ordinal"), Text("fate"), Sealed("note")]),
        ("code", [Text("code"), Whole("sheet")]),
        ("impression",
        [
            Whole("run"), Whole("ordinal"), Text("code"), Text("standing"), Text("fault"), Sealed("fault_note"),
            Whole("numbering"), Whole("number"), Sealed("pencilled"), Sealed("titled"), Text("signed"), Sealed("signature"),
            Sealed("condition"), Text("for_sale"), Whole("asking"), Text("asking_currency"), Sealed("note"),
        ]),
        ("inscription", [Whole("impression"), Whole("ordinal"), Text("side"), Text("manner"), Sealed("position"), Sealed("text")]),
        ("whereabouts",
        [
            Whole("impression"), Whole("ordinal"), Text("kind"), Text("from_state"), Whole("from_place"), Whole("from_holder"),
            Text("to_state"), Whole("to_place"), Whole("to_holder"), .. Date("moved"), .. Date("until"), Whole("rate"), Sealed("note"),
        ]),
        ("ownership",
        [
            Whole("impression"), Whole("ordinal"), Text("kind"), Text("from_state"), Whole("from_owner"), Text("to_state"),
            Whole("to_owner"), Whole("agent"), .. Date("passed"), Whole("price"), Whole("net"), Text("currency"), Sealed("note"),
        ]),
        ("document",
        [
            Text("kind"), Whole("impression"), Text("serial"), .. Date("issued"), Text("standing"), Whole("supersedes"), Sealed("statement"),
        ]),
        ("batch", [Text("kind"), Text("sha256"), Whole("rows"), Sealed("file_name"), Text("undone")]),
        ("kept_column", [Whole("impression"), Whole("batch"), Whole("line"), Sealed("header"), Sealed("value")]),
    ]), (Since: 2,
    [
        ("show", [Sealed("name"), Text("kind"), Whole("place"), Whole("host"), .. Date("opens"), .. Date("closes"), Sealed("note"), Derived("search", "name")]),
        ("show_impression", [Whole("show"), Whole("impression"), Whole("ordinal"), Text("standing")]),
        ("accepted_finding",
        [
            Text("rule"), Text("severity"), Text("subject_kind"), Whole("subject_id"), Sealed("finding"), Sealed("reason"),
            .. Date("accepted"), Text("withdrawn"),
        ]),
    ]), (Since: 3, TablesOfForm3), (Since: 4, TablesOfForm4));

    private static readonly Dictionary<string, FactTable> ByName = Tables.ToDictionary(table => table.Name, StringComparer.Ordinal);

    /// <summary>The table of that permanent name, or null.</summary>
    public static FactTable? Find(string table) => ByName.GetValueOrDefault(table);

    /// <exception cref="ArgumentException">The catalogue has no such table.</exception>
    public static FactTable Table(string table) => Find(table) ?? throw new ArgumentException($"No table {table} in the catalogue.", nameof(table));

    private static Fact Text(string name) => new(name, IsNumber: false, Keeping.Open);

    private static Fact Whole(string name) => new(name, IsNumber: true, Keeping.Open);

    private static Fact Sealed(string name) => new(name, IsNumber: false, Keeping.Sealed);

    private static Fact Derived(string name, params string[] sources) => new(name, IsNumber: false, Keeping.Derived) { Sources = sources };

    /// <summary>A date as written, with the earliest and latest day it can mean.</summary>
    private static Fact[] Date(string name) => [Text(name), Text(name + "_earliest"), Text(name + "_latest")];

    private static List<FactTable> Number(params ReadOnlySpan<(int Since, (string Name, Fact[] Facts)[] Tables)> forms)
    {
        List<FactTable> numbered = [];

        foreach (var (since, tables) in forms)
        {
            foreach (var (name, facts) in tables)
            {
                numbered.Add(new FactTable(numbered.Count, since, name, [.. facts, .. Added(3, AddedByForm3, name), .. Added(4, AddedByForm4, name)]));
            }
        }

        return numbered;
    }

    private static IEnumerable<Fact> Added(int form, (string Table, Fact[] Facts)[] added, string table) =>
        added.Where(one => one.Table == table).SelectMany(one => one.Facts).Select(fact => fact with { Since = form });
}
