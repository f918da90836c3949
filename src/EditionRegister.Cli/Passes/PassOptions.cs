using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Passes;
using EditionRegister.UseCases.Passes;

namespace EditionRegister.Cli;

/// <summary>What is said of a pass; what is not said follows from the other counts, stays as it was, or is not known.</summary>
internal sealed class PassOptions
{
    private readonly Option<string?> _kind = Opt.Word("--kind", PassKinds.All, "What was done. Else printed.");
    private readonly Option<string?> _name = Opt.Text("--name", "TEXT", "What the pass is called at the bench.");
    private readonly Option<string[]?> _matrices = Opt.Texts("--matrix", "MATRIX[=STATE]", "A block, plate, stone or screen used, by its number, code or part, and its state: key=II. Without a state, the one it is in.");
    private readonly Option<string[]?> _colours = Opt.Texts("--colour", "COLOUR[=INK]", "A colour, and which ink.");
    private readonly Option<string?> _ink = Opt.Text("--ink", "INK", "The ink of the only colour.");
    private readonly Option<string?> _manner = Opt.Word("--manner", PassKinds.Manners, "How the colours stand in the pass.");
    private readonly Option<string?> _side = Opt.Word("--side", PassKinds.Sides, "Which side of the sheet. Else recto.");
    private readonly Option<RecordedDate?> _done = Opt.Date("--done", "When: a day, or a span such as 2026-03-01/2026-03-03.");
    private readonly Option<string[]?> _who = Opt.Texts("--who", "PERSON", "Who did it.");
    private readonly Option<int?> _in = Opt.Count("--in", "Sheets that went in. Else all that were at hand.");
    private readonly Option<int?> _added = Opt.Count("--added", "Sheets that joined late. Else none.");
    private readonly Option<int?> _out = Opt.Count("--out", "Sheets that came out.");
    private readonly Option<string[]?> _spoiled = Opt.Texts("--spoiled", "FAULT=N", "Sheets spoiled, by fault: slur=1; or a count alone.");
    private readonly Option<string[]?> _heldOut = Opt.Texts("--held-out", "KIND=N", "Sheets held out as proofs, by kind: progressive=1; or a count alone.");
    private readonly Option<string?> _proofs = Opt.Ranges("--proofs", "SHEETS", "Which sheets of the pile were held out, by place or code: 19, 20.");
    private readonly Option<string?> _sheets = Opt.Ranges("--sheets", "SHEETS", "Which sheets of the pile went through, where not all did: 1-4.");
    private readonly Option<bool> _some = Opt.Flag("--some", "Not all sheets went through it.");
    private readonly Option<int?> _makeReady = Opt.Count("--make-ready", "Sheets of other paper used to get ready; they count in nothing.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[]
        {
            _kind, _name, _matrices, _colours, _ink, _manner, _side, _done, _who, _in, _added, _out, _spoiled, _heldOut, _proofs, _sheets, _some, _makeReady, _note,
        })
        {
            command.Add(option);
        }
    }

    public PassTyped Read(ParseResult line) => new()
    {
        Words = new PassWords
        {
            Kind = line.GetValue(_kind),
            Name = line.GetValue(_name),
            Side = line.GetValue(_side),
            Reach = line.GetValue(_some) ? "some" : null,
            Done = line.GetValue(_done),
            SheetsIn = line.GetValue(_in),
            Added = line.GetValue(_added),
            SheetsOut = line.GetValue(_out),
            MakeReady = line.GetValue(_makeReady),
            Note = line.GetValue(_note),
            Manner = line.GetValue(_manner),
        },
        Matrices = Several(line, _matrices),
        Colours = Several(line, _colours),
        Ink = line.GetValue(_ink),
        People = Several(line, _who),
        Spoiled = Several(line, _spoiled),
        HeldOut = Several(line, _heldOut),
        Sheets = line.GetValue(_sheets),
        Proofs = line.GetValue(_proofs),
    };

    private static string[]? Several(ParseResult line, Option<string[]?> option) => line.GetValue(option) is { Length: > 0 } values ? values : null;
}
