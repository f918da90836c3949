using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Papers in four steps: of which sheets, what, on which labels, where to; then looked at, then written.</summary>
/// <param name="desk">The desk.</param>
/// <param name="given">The sheets another room led here with; null takes the marked ones until others are chosen.</param>
internal sealed class DocumentsPage(Desk desk, ChosenSheets? given = null) : ListPage
{
    private const string Folder = "Folder";
    private const int FilesInSight = 3;

    private static readonly ListColumn[] Columns = [new("key", 3), new("step", 14), new("as it stands", 30, Stretch: 1)];

    private ChosenSheets? _chosen = given;
    private Paper _paper = Paper.All[0];
    private string? _labelSheet;
    private int _from = 1;
    private string? _folder;
    private DocumentsSeen _seen = DocumentsSeen.Nothing;
    private IReadOnlyList<Step> _steps = [];
    private Listing _rows = new(Columns, 0, _ => []);

    public override string Title => "Documents";

    public override string Explains =>
        "Certificates, labels, pencil lines and lists are made here, step by step: pick the sheets, then what to make of them, look at it with p, and write it with w. "
        + "Nothing is written before w, and nothing is issued before you have said yes. Sheets marked in any room are taken first. "
        + "Files go to the register's exports folder unless you name another; where they are is said in full when they are written, and again with f.";

    public override Listing Rows => _rows;

    public override string Empty => "";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        new("Enter", "change this step", () => _steps.Count == 0 ? Task.FromResult<Opening?>(null) : _steps[Current].Change()),
        .. IsReady ? Ready() : [],
        .. _steps.Select(step => new KeyDeed(step.Key, step.Does, step.Change) { Explained = step.Explained }),
        .. desk.Written.Latest.Count > 0 ? [KeyDeed.Opens("f", "files written", () => Files())] : (KeyDeed[])[],
    ];

    private bool IsReady => _seen is { Codes.Count: > 0, Problem: null };

    /// <summary>The sheets meant: those picked, else those marked; null where there are none.</summary>
    private ChosenSheets? Chosen => _chosen ?? (desk.Marked.Count > 0 ? new ChosenSheets(new ImpressionChoice { Sheets = desk.Marked.AsText }, "the marked sheets") : null);

    private LabelSheet? LabelSheet => _seen.LabelSheets.FirstOrDefault(sheet => sheet.Name == (_labelSheet ?? DocumentsSeen.Usual));

    public override IReadOnlyList<Line> Head(int width) =>
    [
        .. Wrap.Of(Chosen is null ? "First choose sheets: press s, or mark them with Space in any room and come back." : "Change a step, look at it with p, then write it with w.", width).Select(line => (Line)line),
        Line.Empty,
    ];

    public override IReadOnlyList<Line> Foot(int width) =>
    [
        .. Wrap.Of(_seen.Problem ?? Sum(), width).Select(line => Line.Of(line, _seen.Problem is null ? Tone.Strong : Tone.Bad)),
        .. desk.Written.Latest.Count > 0 ? [Line.Empty, .. FilesLines(width)] : (Line[])[],
    ];

    public override async Task RefreshAsync()
    {
        _seen = await desk.Store.Do(register => DocumentsSeen.Read(register, Chosen?.Choice, _labelSheet, _from, _paper.IsOnLabels));
        _steps = [.. Steps()];
        _rows = Listing.Of(Columns, _steps, step => [step.Key, step.Name, step.Value]);
    }

    private IEnumerable<Step> Steps()
    {
        yield return new Step("s", "sheets", "Which sheets", Chosen is { } chosen ? $"{chosen.Called}{(_seen.Codes.Count > 0 ? $": {Counted.Sheets(_seen.Codes.Count)}" : "")}" : "none yet", "Chooses the sheets: the marked ones, those of an edition, a place or a show, some by code, or all.", () =>
            Task.FromResult<Opening?>(WhichSheets.Ask(desk, "Papers of which sheets?", picked => { _chosen = picked.Chosen; return Task.FromResult(new Saved("")); })));
        yield return new Step("k", "kind of paper", "What", _paper.Name, "Chooses what is made of them: certificates, labels, pencil lines, an inventory.", () => Task.FromResult<Opening?>(new Choice("What is to be made of them?", [.. Paper.All.Select(paper => Choosable.Opens(paper.Key, paper.Name, () => Take(paper)))])));

        if (_paper.IsOnLabels)
        {
            yield return new Step("l", "label sheet", "Label sheet", LabelSheet is { } sheet ? Shown(sheet) : "none", "Chooses the label sheet that lies in the printer.", () =>
                Task.FromResult<Opening?>(new Choice("Which label sheet lies in the printer?", [.. _seen.LabelSheets.Select(one => Choosable.Opens(null, Shown(one), () => Take(one)))])));
            yield return new Step("b", "begin at", "First label", _from == 1 ? "1: a whole sheet" : $"{Counted.Figure(_from)}: {Counted.Of(_from - 1, "label")} before it used already", "Says which label of a half-used sheet is the first that is still there.", () =>
                Task.FromResult<Opening?>(LabelSheet is { } sheet ? new LabelPositionPage(sheet, _seen.Codes.Count, _from, from => _from = from) : null));
        }

        if (_paper.IsWritten)
        {
            yield return new Step("o", "other folder", "Folder", _folder ?? _seen.Exports, "Names another folder for the files.", () => Task.FromResult<Opening?>(FolderForm()));
        }
    }

    private IEnumerable<KeyDeed> Ready()
    {
        yield return new KeyDeed("p", _paper.IsWritten ? "preview" : "read them", () => _paper.LookAsync(desk, Order())) { Explained = "Shows what will stand on the paper, word for word, before anything is written." };

        if (_paper.IsWritten)
        {
            yield return new KeyDeed("w", "write", () => PaperWriting.BeginAsync(desk, _paper, Order(), WrittenPage)) { Explained = "Writes the files; where that issues something, you are asked first." };
        }
    }

    private PaperOrder Order() => new(Chosen!, _seen.Codes) { LabelSheet = LabelSheet, From = _from, Folder = _folder };

    private string Sum() => _seen.Planned is { } planned ? PapersSaid.Planned(planned) : "";

    private Opening? Take(Paper paper)
    {
        _paper = paper;
        return null;
    }

    private Opening? Take(LabelSheet sheet)
    {
        (_labelSheet, _from) = (sheet.Name, 1);
        return null;
    }

    private Form FolderForm() => new("Another folder", [
        new Field(Folder, _folder ?? "") { Form = "/home/me/papers, or empty for the register's exports folder", Wrong = TypedPath.Wrong },
    ], form =>
    {
        _folder = form[Folder] is { } typed ? TypedPath.Full(typed) : null;
        return Task.FromResult(new Saved($"Files go to {_folder ?? _seen.Exports}."));
    });

    private static string Shown(LabelSheet sheet) => $"{sheet.Name}: {PapersSaid.Geometry(sheet)}";

    private IEnumerable<Line> FilesLines(int width)
    {
        var files = desk.Written.Latest;

        return
        [
            Line.Of("Written in this sitting:", Tone.Quiet),
            .. WrittenText.Paths(files.Take(FilesInSight), width),
            .. files.Count > FilesInSight ? [Line.Of($"and {Counted.Figure(files.Count - FilesInSight)} more: press f", Tone.Quiet)] : (Line[])[],
        ];
    }

    private TextPageOf Files() => new(
        "Files",
        "Every file written since the program was opened, the latest first, with its whole path.",
        width => [.. WrittenText.Paths(desk.Written.Latest, width)]);

    private static TextPageOf WrittenPage(Written written) => new(
        "Written", "What was written, and where it is: the whole path stands on a line of its own, to be copied.", width => [.. WrittenText.Of(written, width)]);

    /// <summary>One step: its key and what that does, its name, how it stands, and how it is changed.</summary>
    private sealed record Step(string Key, string Does, string Name, string Value, string Explained, Func<Task<Opening?>> Change);
}
