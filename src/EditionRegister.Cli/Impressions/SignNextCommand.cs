using System.CommandLine;
using System.Text.Json;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.UseCases.Impressions;

namespace EditionRegister.Cli;

/// <summary><c>edreg sign next</c>: what is still unsigned, and the line of the next sheet.</summary>
internal static class SignNextCommand
{
    private static readonly Column[] Columns = [new("number"), new("title"), new("signature"), new("code"), new("sheet", IsRight: true)];

    public static Command Create(CommandContext context)
    {
        var edition = Arg.Id("EDITION", "The number of the edition.");
        var signature = Opt.Text("--signature", "TEXT", "How the signature reads. Else as before in this work, or the maker's name.");
        CommandWithExample command = new("next", "Lists the sheets of an edition that are not signed yet, in the order of their numbers, each with the line to be pencilled.", "edreg sign next 3") { edition, signature };

        command.SetAction(line => context.Look(line, (register, printer) => Print(printer, register.SignSheets.Left(line.GetValue(edition)!.Value, line.GetValue(signature)))));

        return command;
    }

    private static void Print(Printer printer, SigningSeen seen) => printer.Show(
        text: () =>
        {
            printer.Line(SortingSaid.Left(seen));
            printer.Section("Not signed yet:", Columns, [.. seen.Left.Select(one => (string[])[one.Pencil.Number, one.Pencil.Title, one.Pencil.Signature, one.Sheet.ShownCode, Counted.Figure(one.Sheet.Ordinal)])]);
        },
        json: json =>
        {
            json.WriteNumber("edition", seen.Edition.Id);
            json.WriteNumber("numbered", Signing.Order(seen.Work, seen.Edition).Count);
            json.Each("not_signed", seen.Left, one => Write(json, one.Sheet, one.Pencil));
        });

    public static void Write(Utf8JsonWriter json, Impression sheet, PencilText pencil)
    {
        json.WriteString("code", sheet.ShownCode);
        json.WriteString("number", pencil.Number);
        json.WriteString("title", pencil.Title);
        json.WriteString("signature", pencil.Signature);
    }
}
