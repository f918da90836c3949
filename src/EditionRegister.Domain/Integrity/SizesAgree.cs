using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>What the words of a size say in two systems is the same within rounding, and it is what the record has in millimetres.</summary>
public sealed class SizesAgree : IRule
{
    // Half a millimetre: nobody measures a sheet of paper closer than that.
    private const long Closest = 500;

    private const string Remedy = "Measure again, and write the size anew with `edreg run edit`.";

    public string Name => nameof(SizesAgree);

    public string Sentence => "Where a size is written in words, its two systems say the same within rounding, and the record has it so in millimetres.";

    public string Basis => "arithmetic: an inch is 25.4 mm; rounding lets two systems lie apart by a step of the coarser one and half a step of the finer";

    public IEnumerable<Finding> Check(Work work) => work.Runs.SelectMany(run => new[]
    {
        Look(work, run, SizePart.Image, run.ImageWritten, run.ImageHeight, run.ImageWidth),
        Look(work, run, SizePart.Sheet, run.SheetWritten, run.SheetHeight, run.SheetWidth),
    }).OfType<Finding>();

    private Finding? Look(Work work, PrintRun run, SizePart part, string? written, long? height, long? width)
    {
        if (written is null || SizeReader.SizeOf(written, part).Read is not { } read)
        {
            return null;
        }

        var subject = work.SubjectOf(run);

        return read.Disagreement() is { } systems
            ? this.Query(subject, $"The size of the {part.Word} in {work.CalledRun(run)} is written “{written}”: {systems}", Remedy)
            : read.Height is { } high && read.Width is { } wide && height is { } h && width is { } w && (Math.Abs(high - h) > Closest || Math.Abs(wide - w) > Closest)
            ? this.Query(subject, $"The size of the {part.Word} in {work.CalledRun(run)} is written “{written}”, and the record has {InWords.Millimetres(h)} × {InWords.Millimetres(w)} mm.", Remedy)
            : null;
    }
}
