using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>What is counted and measured of a print run, when it is recorded and when it is put right.</summary>
internal sealed class RunMeasures
{
    private readonly Option<string?> _paper = Opt.Paper("--paper", "The paper: its name, weight, edges and lot, as in kozo, 70 g/m², deckle edges.");
    private readonly Option<string?> _state = Opt.Text("--state", "TEXT", "The state of the matrix.");
    private readonly Option<RecordedDate?> _printed = Opt.Date("--printed", "When it was printed.");
    private readonly Option<int?> _started = Opt.Count("--started", "Sheets started.");
    private readonly Option<int?> _spoiled = Opt.Count("--spoiled", "Sheets spoiled: counted, never registered.");
    private readonly Option<int?> _unused = Opt.Count("--unused", "Sheets left unused.");
    private readonly Option<int?> _heldOut = Opt.Count("--held-out", "Sheets held out as proofs; they lie at the end of the pile.");
    private readonly Option<RecordedSize?> _image = Opt.Size("--image", SizePart.Image, "The size of the image, height first: 300x225 in millimetres, or in words such as 11 3/4 x 8 7/8 in.");
    private readonly Option<RecordedSize?> _sheet = Opt.Size("--sheet", SizePart.Sheet, "The size of the sheet, height first: 400x300 in millimetres, or in words such as 40 x 30 cm.");
    private readonly Option<int?> _cutInto = Opt.Some("--cut-into", "Impressions that each printed sheet is cut into, as when two are printed side by side.");
    private readonly Option<int?> _madeOf = Opt.Some("--made-of", "Printed sheets that make one impression, as in a diptych.");
    private readonly Option<RecordedDate?> _ready = Opt.Date("--ready", "From when the sheets on the rack are dry enough to be sorted.");
    private readonly Option<string?> _posthumous = Opt.Word("--posthumous", ["yes", "no", "unknown"], "Whether it was printed after the maker's death.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _paper, _state, _printed, _started, _spoiled, _unused, _heldOut, _image, _sheet, _cutInto, _madeOf, _ready, _posthumous, _note })
        {
            command.Add(option);
        }
    }

    public PrintRunCorrection Read(ParseResult line)
    {
        var (image, sheet) = (line.GetValue(_image), line.GetValue(_sheet));

        return new PrintRunCorrection
        {
            Paper = line.GetValue(_paper),
            State = line.GetValue(_state),
            Printed = line.GetValue(_printed),
            Started = line.GetValue(_started),
            Spoiled = line.GetValue(_spoiled),
            Unused = line.GetValue(_unused),
            HeldOut = line.GetValue(_heldOut),
            ImageHeight = image?.Size.Height.Micrometres,
            ImageWidth = image?.Size.Width.Micrometres,
            SheetHeight = sheet?.Size.Height.Micrometres,
            SheetWidth = sheet?.Size.Width.Micrometres,
            ImageWritten = image?.Written,
            SheetWritten = sheet?.Written,
            CutInto = line.GetValue(_cutInto),
            MadeOf = line.GetValue(_madeOf),
            Ready = line.GetValue(_ready),
            Posthumous = line.GetValue(_posthumous),
            Note = line.GetValue(_note),
        };
    }
}
