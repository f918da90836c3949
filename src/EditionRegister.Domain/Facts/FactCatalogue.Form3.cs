namespace EditionRegister.Domain.Facts;

public static partial class FactCatalogue
{
    /// <summary>What the third form of register, the bench and the whereabouts whole, added to tables that are older.</summary>
    private static (string Table, Fact[] Facts)[] AddedByForm3 =>
    [
        ("work", [Whole("worked_over")]),
        ("matrix", [Text("part"), Whole("place"), Whole("keeper"), Whole("fate_proof")]),
        ("print_run", [Whole("cut_into"), Whole("made_of"), .. Date("ready"), Text("posthumous"), Text("cancellation_proof")]),
        ("edition", [Text("printing"), Text("rank"), Whole("stated_total"), Text("fell_short")]),
        ("numbering", [Text("name")]),
        ("impression", [Whole("after_pass"), Sealed("variant"), Sealed("dedication")]),
        ("whereabouts", [Sealed("agreement"), Whole("value"), Text("value_currency"), Whole("show")]),
    ];

    private static (string Name, Fact[] Facts)[] TablesOfForm3 =>
    [
        ("matrix_code", [Text("code"), Whole("matrix")]),
        ("matrix_state", [Whole("matrix"), Whole("ordinal"), Text("name"), .. Date("reached"), Sealed("note")]),
        ("pass",
        [
            Whole("run"), Whole("ordinal"), Text("kind"), Text("name"), Text("side"), Text("reach"), .. Date("done"), Whole("sheets_in"), Whole("added"),
            Whole("sheets_out"), Whole("spoiled"), Whole("held_out"), Whole("make_ready"), Sealed("note"),
        ]),
        ("pass_matrix", [Whole("pass"), Whole("matrix"), Whole("state")]),
        ("pass_colour", [Whole("pass"), Whole("ordinal"), Text("colour"), Text("ink"), Text("manner")]),
        ("pass_person", [Whole("pass"), Whole("person")]),
        ("pass_spoiled", [Whole("pass"), Text("fault"), Whole("sheets")]),
        ("pass_held_out", [Whole("pass"), Text("kind"), Whole("sheets")]),
        ("pass_sheet", [Whole("pass"), Whole("impression")]),
        ("grade",
        [
            Whole("impression"), Whole("registration"), Whole("inking"), Whole("edges"), Whole("cleanness"), Whole("likeness"), Text("against"),
            .. Date("graded"), Sealed("note"),
        ]),
        ("sheet_link", [Whole("impression"), Text("kind"), Whole("other"), .. Date("made"), Sealed("note")]),
        ("sheet_change", [Whole("impression"), Whole("ordinal"), Text("what"), Sealed("was"), Sealed("became"), Sealed("reason"), .. Date("changed")]),
        ("entitlement", [Whole("numbering"), Whole("first"), Whole("last"), Whole("person"), .. Date("agreed"), Sealed("note")]),
        ("print_set", [Whole("work"), Text("form"), Text("signed_on"), Sealed("note")]),
        ("set_part", [Whole("print_set"), Whole("ordinal"), Whole("part")]),
        ("set_sheet", [Whole("copy"), Whole("sheet"), Text("standing")]),
        ("reservation", [Whole("impression"), Whole("person"), .. Date("made"), .. Date("until"), Text("standing"), Sealed("note")]),
        ("picture",
        [
            Whole("work"), Whole("ordinal"), Whole("impression"), Whole("edition"), Whole("matrix"), Text("sha256"), Text("media"), Whole("bytes"),
            Whole("width"), Whole("height"), Sealed("file_name"), Sealed("caption"), Sealed("credit"), .. Date("taken"), Text("standing"),
        ]),
        ("condition_term", [Text("word"), Text("name")]),
        ("condition_report", [Whole("impression"), Whole("ordinal"), Text("occasion"), .. Date("examined"), Whole("examiner"), Sealed("summary")]),
        ("condition_remark", [Whole("report"), Whole("ordinal"), Text("term"), Sealed("position"), Sealed("note"), Whole("picture")]),
        ("stock_take", [Whole("place"), Text("occasion"), .. Date("taken"), Whole("person"), Sealed("note")]),
        ("stock_take_line", [Whole("stock_take"), Whole("ordinal"), Text("code"), Whole("impression"), Whole("matrix"), Text("outcome")]),
    ];
}
