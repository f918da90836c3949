using System.CommandLine;
using EditionRegister.Domain.Inventory;
using EditionRegister.UseCases.Inventory;

namespace EditionRegister.Cli;

/// <summary><c>edreg schedule</c>: lists sheets with their values, for an insurer.</summary>
internal static class ScheduleCommand
{
    public static Command Create(CommandContext context)
    {
        var place = Opt.Text("--place", "PATH", "Only what lies in this place, or in a place inside it.");
        var with = Opt.Text("--with", "WHO", "Only what this person, gallery or workshop has.");
        var owner = Opt.Text("--owner", "WHO", "Only what belongs to this person.");
        var asOf = AsOfOption.Create();
        var file = Opt.Text("--out", "FILE", "A CSV to write. Else it is printed.");
        CommandWithExample command = new(
            "schedule",
            "Lists sheets with the values agreed for them, else the prices asked, and sums them by currency: a schedule for your insurer.",
            "edreg schedule --with \"Quay Gallery\" --as-of 2026-03-31")
        {
            place, with, owner, asOf, file,
        };

        command.SetAction(line =>
        {
            ScheduleChoice choice = new(line.GetValue(place), line.GetValue(with), line.GetValue(owner));
            var path = context.PathOf(line.GetValue(file));

            return line.GetValue(asOf) is { } day
                ? ThenPrinted.Look(context, line, day, (then, printer) => SchedulePage.Print(context, printer, then, then.Schedule(choice), path))
                : context.Look(line, (register, printer) => SchedulePage.Print(context, printer, register.ListSchedule.Run(choice), path));
        });

        return command;
    }
}
