using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.AddressBook;

/// <summary>Everything that lies in a place and inside it, place by place, to be read or written to a file.</summary>
internal sealed class PlaceListPage(Desk desk, long place) : TextPage
{
    private const string File = "File";

    private PlaceContents? _contents;

    public override string Title => "What lies there";

    public override string Explains =>
        "Everything that lies in the place and in the places inside it, place by place, with codes, numbers, owners and condition; blocks and plates too, where it is known where they lie. "
        + "f writes it to a file: as a table for a spreadsheet where its name ends in .csv, else as text to print and lay into the drawer.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("f", "write to a file", () => FileForm()) with { Explained = "Writes the list to a file; .csv for a spreadsheet, else text to print." },
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Head(int width) => _contents is null ? [] : [.. Wrap.Of($"{_contents.Path}: {PlaceShown.InAll(_contents)}", width).Select(line => Line.Of(line, Tone.Strong)), Line.Empty];

    public override IReadOnlyList<Line> Text(int width) => _contents is null ? [] :
    [
        .. PlaceShown.Tables(_contents).SelectMany(table => (Line[])[.. Wrap.Of(table.Heading, width).Select(line => Line.Of(line, Tone.Strong)), .. TableLines.Of(table, width), Line.Empty]),
    ];

    public override async Task RefreshAsync() => _contents = await desk.Store.Do(register => register.LookAround.PlaceContents(place));

    private Form FileForm() => new("Write what lies there", [new Field(File, "place.csv") { IsNeeded = true, Form = "ends in .csv for a spreadsheet; anything else is text to print", Wrong = TypedPath.Wrong }], async form =>
    {
        var path = TypedPath.Full(form[File]!);
        var contents = await desk.Store.Do(register => register.WritePlaceList.Run(place, path));
        desk.Written.Add([path]);

        return new Saved($"What lies in {contents.Path} written to {path}: {PlaceShown.InAll(contents)}");
    });
}
