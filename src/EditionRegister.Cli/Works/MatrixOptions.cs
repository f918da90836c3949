using System.CommandLine;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary>What is said of a block, plate, stone or screen, when it is recorded and when it is put right.</summary>
internal sealed class MatrixOptions
{
    private readonly Option<string?> _part = Opt.Text("--part", "TEXT", "Which part of the image it prints: key, sky, left half.");
    private readonly Option<string?> _material = Opt.Text("--material", "TEXT", "What it is made of.");
    private readonly Option<bool> _reduction = Opt.Flag("--reduction", "It is cut away in printing, colour by colour.");
    private readonly Option<bool> _notReduction = Opt.Flag("--not-reduction", "It is not. Without either word nobody knows.");
    private readonly Option<RecordedDate?> _made = Opt.Date("--made", "When it was made.");
    private readonly Option<string?> _place = Opt.Text("--place", "PLACE", "Where it lies.");
    private readonly Option<string?> _keeper = Opt.Text("--keeper", "PERSON", "Who has it, where it is not the maker.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _part, _material, _reduction, _notReduction, _made, _place, _keeper })
        {
            command.Add(option);
        }
    }

    public string? Part(ParseResult line) => line.GetValue(_part);

    public string? Material(ParseResult line) => line.GetValue(_material);

    public RecordedDate? Made(ParseResult line) => line.GetValue(_made);

    public string? Place(ParseResult line) => line.GetValue(_place);

    public string? Keeper(ParseResult line) => line.GetValue(_keeper);

    /// <summary>yes or no; null where neither is said.</summary>
    public string? Reduction(ParseResult line) => (line.GetValue(_reduction), line.GetValue(_notReduction)) switch
    {
        (true, true) => throw new WrongUsageException("--reduction and --not-reduction exclude each other."),
        (true, _) => "yes",
        (_, true) => "no",
        _ => null,
    };

    /// <summary>Which matrix of a work is meant.</summary>
    public static Option<string?> Which() => Opt.Text("--matrix", "MATRIX", "Which matrix: its number, its code or its part. Needed where the work has several.");
}
