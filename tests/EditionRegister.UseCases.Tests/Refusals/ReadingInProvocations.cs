using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class ReadingInProvocations
{
    private const string OneSheet = "title,maker\r\nWeir,Mira Tolland\r\n";

    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("file-not-found", studio => studio.Register.ReadIn.Run(studio.In("sheets.csv"), [])),
        new("file-has-no-rows", studio => Read(studio, "title,maker\r\n")),
        new("map-not-read", studio => Read(studio, OneSheet, "number")),
        new("map-header-unknown", studio => Read(studio, OneSheet, "Edition no.=number")),
        new("map-column-unknown", studio => Read(studio, OneSheet, "title=heading")),
        new("column-twice", studio => Read(studio, OneSheet, "title=title", "maker=title")),
        new("rows-not-read", studio => Read(studio, "title,maker,number\r\nWeir,Mira Tolland,first\r\nWeir,Mira Tolland,2/0\r\n")),
        new("rows-not-read", studio => Read(studio, "title,maker,number\r\nWeir,Mira Tolland,2/0\r\nWeir,Mira Tolland,3/0\r\n")),
        new("batch-not-found", studio => studio.Register.UndoBatch.Run(99)),
        new("batch-built-on", studio =>
        {
            var batch = studio.Register.ReadIn.Run(studio.Write("sheets.csv", OneSheet), []).Batch!.Value;
            studio.Register.PriceImpressions.Run(Pile(7, "1"), 9_000, "EUR", null);
            studio.Register.UndoBatch.Run(batch);
        }),
        new("batch-built-on", studio =>
        {
            var batch = studio.Register.ReadIn.Run(studio.Write("sheets.csv", OneSheet), []).Batch!.Value;
            studio.Register.RecordMatrix.Run(7, "block", null, "no", Domain.Dates.RecordedDate.None);
            studio.Register.UndoBatch.Run(batch);
        }),
        new("csv-empty", studio => Read(studio, "")),
        new("csv-column-without-name", studio => Read(studio, "title,,maker\r\nWeir,,Mira Tolland\r\n")),
        new("csv-column-twice", studio => Read(studio, "title,title\r\nWeir,Weir\r\n")),
        new("csv-ragged", studio => Read(studio, "title,maker\r\nWeir\r\nWeir,Mira,Tolland\r\n")),
        new("csv-ragged", studio => Read(studio, "title,maker\r\n" + string.Concat(Enumerable.Repeat("Weir\r\n", 23)))),
        new("csv-open-quote", studio => Read(studio, "title,maker\r\n\"Weir,Mira Tolland\r\n")),
        new("csv-text-after-quote", studio => Read(studio, "title,maker\r\n\"Weir\" two,Mira Tolland\r\n")),
        new("csv-stray-quote", studio => Read(studio, "title,maker\r\nThe \"Weir\",Mira Tolland\r\n")),
        new("csv-utf-16", studio => Read(studio, [0xFF, 0xFE, 0x74, 0x00])),
        new("csv-not-utf-8", studio => Read(studio, [.. "title\r\nGr"u8, 0xFC, .. "n\r\n"u8])),
        new("csv-nul", studio => Read(studio, "title\r\nWe\0ir\r\n")),
    ];

    private static void Read(Studio studio, string text, params string[] maps) => studio.Register.ReadIn.Run(studio.Write("sheets.csv", text), maps);

    private static void Read(Studio studio, byte[] bytes)
    {
        File.WriteAllBytes(studio.In("sheets.csv"), bytes);
        studio.Register.ReadIn.Run(studio.In("sheets.csv"), []);
    }
}
