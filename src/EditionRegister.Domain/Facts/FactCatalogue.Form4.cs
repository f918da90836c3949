namespace EditionRegister.Domain.Facts;

public static partial class FactCatalogue
{
    /// <summary>What the fourth form of register, the reading of what people write, added: typed values beside the text as written.</summary>
    private static (string Table, Fact[] Facts)[] AddedByForm4 =>
    [
        ("work", [Text("year_edtf"), Whole("technique_colours"), Text("technique_support")]),
        ("matrix", [Text("made_edtf"), Text("fate_edtf")]),
        ("print_run",
        [
            Text("printed_edtf"), Text("ready_edtf"), Text("image_written"), Text("sheet_written"),
            Text("paper_name"), Text("paper_maker"), Whole("paper_grammage"), Whole("paper_pounds"), Whole("paper_basis_height"), Whole("paper_basis_width"),
            Whole("paper_height"), Whole("paper_width"), Text("paper_edges"), Text("paper_lot"),
        ]),
        ("edition", [Text("declared_edtf"), Text("closed_edtf"), Sealed("statement")]),
        ("numbering", [Text("hedge"), Whole("hedged_size")]),
        ("impression", Read("pencil")),
        ("inscription", Read("says")),
        ("whereabouts", [Text("moved_edtf"), Text("until_edtf")]),
        ("ownership", [Text("passed_edtf")]),
        ("document", [Text("issued_edtf")]),
        ("show", [Text("opens_edtf"), Text("closes_edtf")]),
        ("accepted_finding", [Text("accepted_edtf")]),
        ("matrix_state", [Text("reached_edtf")]),
        ("pass", [Text("done_edtf")]),
        ("grade", [Text("graded_edtf")]),
        ("sheet_link", [Text("made_edtf")]),
        ("sheet_change", [Text("changed_edtf")]),
        ("entitlement", [Text("agreed_edtf")]),
        ("reservation", [Text("made_edtf"), Text("until_edtf")]),
        ("picture", [Text("taken_edtf")]),
        ("condition_report", [Text("examined_edtf")]),
        ("stock_take", [Text("taken_edtf")]),
    ];

    private static (string Name, Fact[] Facts)[] TablesOfForm4 =>
    [
        ("technique", [Text("word"), Text("name"), Text("aat")]),
        ("work_technique", [Whole("work"), Whole("ordinal"), Text("technique")]),
        ("inscription_role", [Whole("inscription"), Whole("ordinal"), Text("role"), Sealed("name")]),
    ];

    /// <summary>What a text says of a sheet's number, edition and state.</summary>
    private static Fact[] Read(string of) =>
    [
        Text(of + "_kind"), Text(of + "_series"), Whole(of + "_number"), Whole(of + "_size"), Text(of + "_hedge"), Text(of + "_notation"), Whole(of + "_state"),
        Whole(of + "_state_of"),
    ];
}
