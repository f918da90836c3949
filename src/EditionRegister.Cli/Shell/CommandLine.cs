using System.CommandLine;
using System.CommandLine.Help;

namespace EditionRegister.Cli;

/// <summary>The whole command line: the root with its options and every command under it.</summary>
internal static class CommandLine
{
    public static ParseResult Parse(
        IReadOnlyList<string> args,
        CommandContext context,
        IReadOnlyList<Func<CommandContext, Command>> commands)
    {
        // A title may begin with @ or look like bundled letters: neither is to be taken for something else.
        ParserConfiguration plain = new() { ResponseFileTokenReplacer = null, EnablePosixBundling = false };

        return Root(context, commands).Parse(args, plain);
    }

    private static RootCommand Root(CommandContext context, IReadOnlyList<Func<CommandContext, Command>> commands)
    {
        RootCommand root = new("Keeps a true register of numbered hand-printed sheets.") { HelpName = HelpText.Program };
        root.Directives.Clear();
        root.Options.Clear();
        root.Add(new HelpOption("--help", "-h", "-?") { Description = "Shows what a command does, with an example.", Action = new ShowHelp(context) });
        root.Add(new VersionOption { Description = "The same as the command version.", Action = new ShowVersion(context) });

        foreach (var option in context.Global.All)
        {
            root.Add(option);
        }

        foreach (var create in commands)
        {
            root.Add(create(context));
        }

        root.SetAction(line => OpenRooms.Run(context, line, root));

        return root;
    }
}
