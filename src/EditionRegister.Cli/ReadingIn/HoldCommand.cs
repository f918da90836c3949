using System.CommandLine;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary><c>edreg hold</c>: an impression of somebody else's edition.</summary>
internal static class HoldCommand
{
    public static Command Create(CommandContext context)
    {
        var title = Opt.Text("--title", "TEXT", "The title. Else nobody knows it.");
        var maker = Opt.Text("--maker", "WHO", "Who made it; recorded in the address book where they are new. Else nobody knows.");
        var number = Opt.SheetNumber("--number", "The number as it stands on the sheet, as in 14/75, A/P II/V or épreuve d'artiste 3/10.");
        var statement = Opt.Statement("The edition in the words of a catalogue, kept as written: edition of 75 plus 10 artist's proofs.");
        var total = Opt.Some("--total", "All impressions there are, with every proof, as others state it.");
        var place = Opt.Text("--place", "PLACE", "Where it lies. Else nobody knows.");
        var with = Opt.Text("--with", "WHO", "Who has it.");
        var owner = Opt.Text("--owner", "WHO", "Whose it is. Else nobody knows.");
        var year = Opt.Date("--year", "When it was made.");
        var technique = Opt.Technique("The technique, in words.");
        var signed = Opt.Word("--signed", ["yes", "no", "unknown"], "Whether it is signed by hand. Else unknown.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("hold", "Records one impression of somebody else's edition that is here, with its work and its maker in the same go.", "edreg hold --title \"Weir\" --maker \"Ada Brandt\" --number 14/75 --total 83 --place \"Drawer 3\"")
        {
            title, maker, number, statement, total, place, with, owner, year, technique, signed, note,
        };

        command.SetAction(line => context.Record(line, register =>
        {
            HeldSheet held = new()
            {
                Title = line.GetValue(title),
                Maker = line.GetValue(maker),
                Number = line.GetValue(number),
                Statement = line.GetValue(statement),
                Total = line.GetValue(total),
                Place = line.GetValue(place),
                With = line.GetValue(with),
                Owner = line.GetValue(owner),
                Year = line.GetValue(year),
                Technique = line.GetValue(technique),
                Signed = line.GetValue(signed) ?? "unknown",
                Note = line.GetValue(note),
            };
            var code = register.HoldSheet.Run(held);
            var (work, sheet) = (register.LookAround.Impression(code).Work, register.LookAround.Impression(code).Impression);

            return new Recorded(MovesSaid.Held(Called.Work(work), held.Number, held.Total, code), json =>
            {
                json.WriteNumber("work", work.Id);
                json.WriteString("code", code);
                json.WriteString("number", held.Number);
                json.Whole("stated_total", held.Total);
                json.WriteString("statement", held.Statement);
                PencilJson.Write(json, sheet);
            });
        }));

        return command;
    }
}
