using System.CommandLine;
using EditionRegister.Domain.Words;

namespace EditionRegister.Cli;

/// <summary><c>edreg fault</c>: faults of the register's own.</summary>
internal static class FaultCommand
{
    private static readonly Column[] Columns = [new("fault"), new("name")];

    public static Command Create(CommandContext context) => new CommandWithExample("fault", "Adds faults for which sheets are left out, beside those every register knows.", "edreg fault list")
    {
        List(context),
        Add(context),
    };

    private static CommandWithExample List(CommandContext context)
    {
        CommandWithExample command = new("list", "Lists every fault.", "edreg fault list");

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var faults = register.LookAround.OwnWords().AllFaults;
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, faults.Select(fault => (string[])[fault.Word, fault.Name]));
                    printer.Line($"{Counted.Of(faults.Count, "fault")}.");
                },
                json: json => json.Each("faults", faults, fault =>
                {
                    json.WriteString("fault", fault.Word);
                    json.WriteString("name", fault.Name);
                }));
        }));

        return command;
    }

    private static CommandWithExample Add(CommandContext context)
    {
        var word = Arg.Text("WORD", "What the register calls it, for ever: small letters and hyphens.");
        var name = Opt.Text("--name", "NAME", "As it is said.");
        name.Required = true;
        CommandWithExample command = new("add", "Adds a fault to the list.", "edreg fault add halo --name \"oil halo\"") { word, name };

        command.SetAction(line => context.Record(line, register =>
        {
            NewFault fault = new(line.GetRequiredValue(word), line.GetRequiredValue(name)!);
            register.AddFault.Run(fault);

            return new Recorded(WordsSaid.Fault(fault.Word, fault.Name), json =>
            {
                json.WriteString("fault", fault.Word);
                json.WriteString("name", fault.Name.Trim());
            });
        }));

        return command;
    }
}
