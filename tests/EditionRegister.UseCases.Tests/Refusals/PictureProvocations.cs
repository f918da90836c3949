using EditionRegister.Domain.Pictures;
using EditionRegister.UseCases.Pictures;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Pictures that are not taken in, taken off or published, and days on which there is nothing to look at.</summary>
internal static class PictureProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("picture-not-read", studio => Add(studio, studio.Write("front.jpg", "hello"))),
        new("picture-cut-short", studio => Add(studio, Png(studio, "front.png", PlainPng.Of(40, 30, 128)[..^20]))),
        new("picture-too-many-pixels", studio => Add(studio, Png(studio, "front.png", PlainPng.Claiming(20_000, 20_000)))),
        new("picture-too-large", studio =>
        {
            using (var file = File.Create(studio.In("front.png")))
            {
                file.SetLength(100_000_001);
            }

            Add(studio, studio.In("front.png"));
        }),
        new("picture-not-a-file", studio => Add(studio, "/studio/nowhere.jpg")),
        new("picture-of-nothing", studio => studio.Register.AddPictures.One(Png(studio), new PictureOf())),
        new("picture-of-two-works", studio => studio.Register.AddPictures.One(Png(studio), new PictureOf(studio.Code(1, 1), Edition: 2))),
        new("picture-of-two-works", studio => studio.Register.AddPictures.One(Png(studio), new PictureOf(studio.Code(1, 1), Matrix: 2))),
        new("matrix-not-found", studio => studio.Register.AddPictures.One(Png(studio), new PictureOf(Matrix: 99))),
        new("picture-names-no-code", studio => studio.Register.AddPictures.ByName([Png(studio, "holiday.png")])),
        new("picture-on-record", studio =>
        {
            Add(studio, Png(studio));
            Add(studio, Png(studio));
        }),
        new("picture-not-kept", studio =>
        {
            studio.Write("register/images", "a file where the folder should be");
            Add(studio, Png(studio));
        }),
        new("picture-not-found", studio => studio.Register.TakePictureOff.Run(7)),
        new("picture-taken-off", studio =>
        {
            Add(studio, Png(studio));
            studio.Register.TakePictureOff.Run(1);
            studio.Register.TakePictureOff.Run(1);
        }),
        new("picture-shown-already", studio =>
        {
            Add(studio, Png(studio));
            studio.Register.TakePictureOff.PutBack(1);
        }),
        new("picture-none-shown", studio => studio.Register.WritePublicPictures.Run()),
        new("picture-file-lost", studio =>
        {
            Add(studio, Png(studio));
            Directory.Delete(studio.In("register", "images"), recursive: true);
            studio.Register.WritePublicPictures.Run();
        }),

        // A file that is as it was taken in can be unpacked; only want of memory keeps it from that.
        new("picture-not-drawn", _ => throw Formats.Pictures.PictureFileRefusals.NotDrawn("7KQ4-M2X3-picture-1.jpg")),

        // Permissions do not hold back a test that runs as the machine's administrator.
        new("picture-not-opened", _ => throw PictureRefusals.NotOpened("/studio/front.jpg", "Access to the path '/studio/front.jpg' is denied.")),

        new("day-before-register", studio => studio.Register.LookBack.To(new DateOnly(2020, 1, 1))),
        new("day-not-over", studio => studio.Register.LookBack.To(new DateOnly(2999, 1, 1))),
    ];

    private static void Add(Studio studio, string path) => studio.Register.AddPictures.One(path, new PictureOf(Edition: 1));

    private static string Png(Studio studio, string name = "front.png", byte[]? bytes = null)
    {
        File.WriteAllBytes(studio.In(name), bytes ?? PlainPng.Of(40, 30, 128));

        return studio.In(name);
    }
}
