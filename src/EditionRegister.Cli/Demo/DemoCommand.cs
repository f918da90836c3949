using System.CommandLine;
using EditionRegister.Store;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.Cli;

/// <summary><c>edreg demo</c>: makes the demo's register and writes all of its documents.</summary>
internal static class DemoCommand
{
    public static Command Create(CommandContext context)
    {
        var to = Opt.Text("--to", "DIR", "Where to put it. Else exports/demo, or exports/demo-faulty with --faulty.");
        var faulty = Opt.Flag("--faulty", "Break it in one way for each rule, for `edreg check` to find.");
        CommandWithExample command = new("demo", "Makes a small register of invented prints, the same every time, and writes its documents.", "edreg demo --to trial") { to, faulty };

        command.SetAction(line =>
        {
            var isFaulty = line.GetValue(faulty);
            var folder = line.GetValue(to) ?? Path.Combine("exports", isFaulty ? "demo-faulty" : "demo");
            var full = Path.GetFullPath(folder, context.Services.CurrentDirectory);
            var register = new MakeDemo(context.Error.WriteLine).Run(new RegisterFolder(Path.Combine(full, "register")));
            IReadOnlyList<string> files = isFaulty ? [] : MakeDemo.WriteDocuments(register, full);

            if (isFaulty)
            {
                MakeDemo.MakeFaulty(register);
            }

            Tell(register, [.. files.Select(file => Path.Combine(folder, Path.GetRelativePath(full, file)))], Path.Combine(folder, "register")).Print(context.Printer(), "demo");

            return ExitCode.Done;
        });

        return command;
    }

    private static Recorded Tell(Register register, IReadOnlyList<string> files, string folder)
    {
        var works = register.LookAround.Works();
        var counts = FormattableString.Invariant($"{works.Count} works, {works.Sum(work => work.Impressions.Count)} impressions, {register.LookAround.Head().N} entries in the logbook");

        return new Recorded($"The demo's register is in {folder}: {counts}.", json =>
        {
            json.WriteString("register", folder);
            json.Texts("files", files);
        })
        {
            More = printer =>
            {
                foreach (var file in files)
                {
                    printer.Line($"  {file}");
                }

                printer.Line($"Look around with `edreg list --register {folder}`; check it with `edreg check --register {folder}`.");
            },
        };
    }
}
