using System.CommandLine;
using System.Text.Json;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.Cli;

/// <summary>What stands before and behind everything that is printed of a register as it stood.</summary>
internal static class ThenPrinted
{
    /// <summary>Looks back to the day, prints under its heading what is asked for, and lets go of it.</summary>
    public static int Look(CommandContext context, ParseResult line, DateOnly day, Action<RegisterThen, Printer> look)
    {
        using var then = context.Open(line).LookBack.To(day);
        look(then, context.Printer());

        return ExitCode.Done;
    }

    public static void Heading(Printer printer, RegisterThen then)
    {
        printer.Line(ThenShown.Heading(then));
        printer.Line();
    }

    public static void Differences(Printer printer, IReadOnlyList<KnownDifference> differences)
    {
        var table = ThenShown.Differences(differences);
        printer.Section(table.Heading, [.. table.Columns.Select(column => new Column(column.Head, column.IsRight))], table.Rows);

        if (differences.Count == 0)
        {
            printer.Line();
            printer.Line(ThenShown.NothingNew);
        }

        printer.Line(ThenShown.Undated);
    }

    public static void Write(Utf8JsonWriter json, RegisterThen then, IReadOnlyList<KnownDifference> differences)
    {
        json.WriteStartObject("as_of");
        json.WriteString("day", ThenShown.Iso(then.Day));
        json.WriteNumber("entry", then.Last.N);
        json.WriteString("recorded", then.Last.At);
        json.WriteEndObject();
        json.Each("known_now", differences, one =>
        {
            json.WriteString("code", one.Code);
            json.WriteString("number", one.Number);
            json.WriteString("title", one.Title);
            json.WriteString("then", one.Then);
            json.WriteString("now", one.Now);
            json.WriteString("recorded", one.Recorded);
        });
    }
}
