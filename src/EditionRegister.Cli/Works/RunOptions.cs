using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>A print run as it is first recorded: what was counted and measured, what for, and where the pile lies.</summary>
internal sealed class RunOptions
{
    private readonly RunMeasures _measures = new();
    private readonly Option<string?> _purpose = Opt.Word("--purpose", ["edition", "proofing", "restrike", "unknown"], "What it was printed for. Else edition.");
    private readonly Option<int?> _pile = Opt.Count("--pile", "Sheets in the pile, proofs held out included. Worked out where --started is given.");
    private readonly Option<bool> _cancellationProof = Opt.Flag("--cancellation-proof", "It is the proof from the cancelled matrix; its purpose is proofing.");
    private readonly Option<bool> _underWay = Opt.Flag("--under-way", "The sheets are still going through the press: passes follow, and `edreg run pile` after the last.");
    private readonly Option<string?> _place = Opt.Text("--place", "PLACE", "Where the pile lies. Else it is with the maker.");

    public void AddTo(Command command)
    {
        command.Add(_purpose);
        _measures.AddTo(command);
        command.Add(_pile);
        command.Add(_cancellationProof);
        command.Add(_underWay);
        command.Add(_place);
    }

    public string? Place(ParseResult line) => line.GetValue(_place);

    public NewPrintRun Read(ParseResult line)
    {
        var measures = _measures.Read(line);

        return new NewPrintRun
        {
            Purpose = line.GetValue(_purpose) ?? "edition",
            Paper = measures.Paper,
            State = measures.State,
            Printed = measures.Printed ?? RecordedDate.None,
            Started = measures.Started,
            Spoiled = measures.Spoiled,
            Unused = measures.Unused,
            HeldOut = measures.HeldOut,
            Pile = line.GetValue(_pile),
            ImageHeight = measures.ImageHeight,
            ImageWidth = measures.ImageWidth,
            SheetHeight = measures.SheetHeight,
            SheetWidth = measures.SheetWidth,
            ImageWritten = measures.ImageWritten,
            SheetWritten = measures.SheetWritten,
            CutInto = measures.CutInto,
            MadeOf = measures.MadeOf,
            Ready = measures.Ready ?? RecordedDate.None,
            Posthumous = measures.Posthumous,
            IsCancellationProof = line.GetValue(_cancellationProof),
            IsUnderWay = line.GetValue(_underWay),
            Note = measures.Note,
        };
    }
}
