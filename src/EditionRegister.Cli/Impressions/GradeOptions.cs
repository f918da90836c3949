using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary>How sheets look to whoever grades them.</summary>
internal sealed class GradeOptions
{
    private readonly IReadOnlyList<(GradeAspect Aspect, Option<int?> Option)> _marks = [.. GradeAspect.All.Select(aspect => (aspect, Opt.Some($"--{aspect.Word}", $"1, poor, to 5, as good as it gets: {aspect.Asks}?")))];
    private readonly Option<string?> _notLooked = Opt.Word("--not-looked", [.. GradeAspect.All.Select(aspect => aspect.Word)], "Takes a mark away: nobody looked after all.");
    private readonly Option<string?> _against = Opt.Word("--against", GradeAspect.Against, "What the sheets were held against.");
    private readonly Option<RecordedDate?> _date = Opt.Date("--date", "When. Else today.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _notLooked, _against, _date, _note })
        {
            command.Add(option);
        }

        foreach (var (_, option) in _marks)
        {
            command.Add(option);
        }
    }

    /// <summary>True where the line says anything about how the sheets look.</summary>
    public bool IsAsked(ParseResult line) =>
        _marks.Any(mark => line.GetValue(mark.Option) is not null) || (line.GetValue(_notLooked) ?? line.GetValue(_against) ?? line.GetValue(_note)) is not null || line.GetValue(_date) is not null;

    public GradeGiven Read(ParseResult line) => new()
    {
        Marks = _marks.Where(mark => line.GetValue(mark.Option) is not null).ToDictionary(mark => mark.Aspect, mark => line.GetValue(mark.Option)!.Value),
        NotLooked = line.GetValue(_notLooked) is { } word ? [GradeAspect.Of(word)!] : [],
        Against = line.GetValue(_against),
        Graded = line.GetValue(_date),
        Note = line.GetValue(_note),
    };
}
