using System.CommandLine;
using EditionRegister.UseCases.Pictures;

namespace EditionRegister.Cli;

/// <summary><c>edreg picture list</c>: lists pictures.</summary>
internal static class PictureListCommand
{
    private static readonly Column[] Columns =
        [new("picture", IsRight: true), new("work"), new("shows"), new("file"), new("kind"), new("pixels", IsRight: true), new("standing"), new("caption")];

    public static Command Create(CommandContext context)
    {
        PictureOptions of = new();
        var work = Opt.Id("--work", "a work", "Only of this work.");
        var all = Opt.Flag("--all", "Also those that were taken off.");
        CommandWithExample command = new("list", "Lists pictures: what each shows, its file and its size.", "edreg picture list --edition 1") { work, all };
        of.AddTo(command);

        command.SetAction(line => context.Look(line, (register, printer) =>
        {
            var pictures = register.ListPictures.Run(of.Read(line), line.GetValue(work), line.GetValue(all));
            printer.Show(
                text: () =>
                {
                    printer.Table(Columns, pictures.Select(Row));
                    printer.Line($"{Counted.Of(pictures.Count, "picture")}.");
                },
                json: json => json.Each("pictures", pictures, one => Write(json, one)));
        }));

        return command;
    }

    private static string[] Row(PictureListed one) =>
    [
        Counted.Figure(one.Picture.Id), one.Work.ShownTitle, PicturesSaid.Shows(one.Work, one.Picture), one.Picture.FileName ?? "(erased)", PicturesSaid.Kind(one.Picture),
        PicturesSaid.Pixels(one.Picture), PicturesSaid.Standing(one), one.Picture.Caption ?? "",
    ];

    private static void Write(System.Text.Json.Utf8JsonWriter json, PictureListed one)
    {
        json.WriteNumber("picture", one.Picture.Id);
        json.WriteNumber("work", one.Work.Id);
        json.WriteString("sheet", one.Work.Impressions.FirstOrDefault(sheet => sheet.Id == one.Picture.Impression)?.ShownCode);
        json.Whole("edition", one.Picture.Edition);
        json.Whole("matrix", one.Picture.Matrix);
        json.WriteString("file_name", one.Picture.FileName);
        json.WriteString("media", one.Picture.Media);
        json.WriteNumber("bytes", one.Picture.Bytes);
        json.WriteNumber("width", one.Picture.Width);
        json.WriteNumber("height", one.Picture.Height);
        json.WriteString("sha256", one.Picture.Sha256);
        json.WriteString("path", one.Path);
        json.WriteBoolean("is_there", one.IsThere);
        json.WriteString("caption", one.Picture.Caption);
        json.WriteString("credit", one.Picture.Credit);
        json.Date("taken", one.Picture.Taken);
        json.WriteString("standing", one.Picture.Standing);
    }
}
