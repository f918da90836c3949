using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Cli;

/// <summary><c>edreg picture add</c>: takes pictures in.</summary>
internal static class PictureAddCommand
{
    public static Command Create(CommandContext context)
    {
        var files = Arg.Texts("FILE", "JPEG, PNG or WebP. Several are matched by the code of a sheet or block in their names, as in 7KQ4-M2X3-front.jpg.");
        files.Arity = ArgumentArity.OneOrMore;
        PictureOptions of = new();
        var caption = Opt.Text("--caption", "TEXT", "What is to be seen.");
        var credit = Opt.Text("--credit", "TEXT", "Who took it.");
        var taken = Opt.Date("--taken", "When it was taken.");
        CommandWithExample command = new("add", "Copies pictures into the register as they are: one of a sheet, block or edition, or many by the codes in their names.", "edreg picture add front.jpg --sheet 7KQ4-M2X3 --edition 1") { files, caption, credit, taken };
        of.AddTo(command);

        command.SetAction(line =>
        {
            var (paths, subject) = ((line.GetValue(files) ?? []).Select(file => context.PathOf(file)!).ToList(), of.Read(line));

            if (subject is not null && paths.Count > 1)
            {
                throw new WrongUsageException("--sheet, --edition and --matrix say what one picture shows. Name one file, or leave them away and let the codes in the files' names say it.");
            }

            PictureWords words = new(line.GetValue(caption), line.GetValue(credit), line.GetValue(taken));

            return context.Record(line, register => Add(register, paths, subject, words));
        });

        return command;
    }

    private static Recorded Add(Register register, List<string> paths, PictureOf? subject, PictureWords words)
    {
        var added = subject is null ? register.AddPictures.ByName(paths, words) : new PicturesAdded([register.AddPictures.One(paths[0], subject, words)], [], []);

        return new Recorded(PicturesSaid.Added(added), json =>
        {
            json.WriteStartArray("pictures");

            foreach (var picture in added.Pictures)
            {
                json.WriteNumberValue(picture);
            }

            json.WriteEndArray();
            json.Texts("on_record", added.OnRecord);
            json.Texts("left_out", added.Unmatched);
        })
        {
            More = printer => printer.Line(PicturesSaid.Mind),
        };
    }
}
