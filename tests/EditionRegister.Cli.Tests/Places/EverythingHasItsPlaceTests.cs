using System.CommandLine;
using EditionRegister.UseCases;

namespace EditionRegister.Cli.Tests.Places;

/// <summary>Everything the register can do is to be had as a command and in a room, or the reason is written down.</summary>
public sealed class EverythingHasItsPlaceTests
{
    private static readonly string[] NoUseCases = ["Folder", "Settings", "Time"];

    [Fact]
    public void Every_use_case_has_its_line()
    {
        var known = typeof(Register).GetProperties().Select(property => property.Name).Except(NoUseCases).Concat(["MakeRegister", "MakeDemo"]).Order(StringComparer.Ordinal);

        Assert.Equal(known, UseCasePlaces.All.Select(place => place.UseCase).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_gap_has_its_reason_and_only_gaps_have_one()
    {
        Assert.All(UseCasePlaces.All, place => Assert.Equal(place.Command is null, place.WhyNoCommand is not null));
        Assert.All(UseCasePlaces.All, place => Assert.Equal(place.Room is null, place.WhyNoRoom is not null));
    }

    [Fact]
    public void Every_command_named_is_there()
    {
        using CliRun cli = new();
        CommandContext context = new(cli.Services, TextWriter.Null, TextWriter.Null);
        var all = Commands.All.Select(create => create(context)).ToList();

        var missing = UseCasePlaces.All.SelectMany(place => place.Also.Append(place.Command)).OfType<string>().Where(command => Find(all, command.Split(' ')) is null);

        Assert.Empty(missing);
    }

    [Fact]
    public void Every_room_named_does_it_where_it_is_said()
    {
        var rooms = Path.Combine(Clone.Folder, "src", "EditionRegister.Tui");

        var elsewhere = UseCasePlaces.All.Where(place => place.File is { } file && !Does(Path.Combine(rooms, file + ".cs"), place.UseCase)).Select(place => $"{place.UseCase} is not in {place.File}");

        Assert.Empty(elsewhere);
    }

    [Fact]
    public void Every_command_that_does_something_stands_in_a_line()
    {
        string[] looking = ["show", "map", "work list", "work show", "person list", "person show", "place list", "shows list", "shows see", "sign next", "set list", "set show", "matrix list", "pass list", "kind list", "fault list", "technique list", "stock list", "stock show", "condition list", "condition show", "condition terms", "condition term", "version"];
        using CliRun cli = new();
        CommandContext context = new(cli.Services, TextWriter.Null, TextWriter.Null);

        var commands = Commands.All.Select(create => create(context)).SelectMany(command => command.Subcommands.Count == 0 ? [command.Name] : command.Subcommands.Select(sub => $"{command.Name} {sub.Name}"));

        Assert.Empty(commands.Except(looking).Except(UseCasePlaces.All.SelectMany(place => place.Also.Append(place.Command)).OfType<string>()));
    }

    private static bool Does(string file, string useCase)
    {
        var text = File.Exists(file) ? File.ReadAllText(file) : "";

        return text.Contains($".{useCase}.", StringComparison.Ordinal) || text.Contains($".{useCase};", StringComparison.Ordinal) || text.Contains($"new {useCase}(", StringComparison.Ordinal);
    }

    private static Command? Find(IEnumerable<Command> among, string[] words) =>
        among.FirstOrDefault(command => command.Name == words[0]) is not { } found ? null : words.Length == 1 ? found : Find(found.Subcommands, words[1..]);
}
