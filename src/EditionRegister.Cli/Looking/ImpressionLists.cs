using System.Text.Json;
using EditionRegister.Domain.Chains;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>Lists of impressions as every command prints them; the code comes first, so that it is never lost at the edge of a screen.</summary>
internal static class ImpressionLists
{
    public static IReadOnlyList<Column> Columns { get; } =
        [new("code"), new("number"), new("title"), new("maker"), new("standing"), new("where"), new("whose")];

    public static IReadOnlyList<string> Row(ImpressionListed listed) =>
    [
        listed.Impression.ShownCode,
        listed.Work.NumberOf(listed.Impression),
        listed.Work.ShownTitle,
        listed.Work.ShownMaker,
        Called.Plain(listed.Impression.Standing),
        WhereInWords.Of(listed.Work, listed.Impression),
        WhereInWords.OwnerOf(listed.Work, listed.Impression),
    ];

    public static void Print(Printer printer, ImpressionsListed listed, int skipped) => printer.Show(
        text: () => PrintText(printer, listed, skipped),
        json: json => WriteAll(json, listed));

    public static void PrintText(Printer printer, ImpressionsListed listed, int skipped)
    {
        printer.Table(Columns, listed.Page.Select(Row));
        printer.Line(LastLine(listed, skipped));

        if (SoughtSaid.Whole(listed.Sought) is { } understood)
        {
            printer.Line(understood);
        }
    }

    public static void WriteAll(Utf8JsonWriter json, ImpressionsListed listed)
    {
        json.Each("impressions", listed.Page, one => Write(json, one));
        json.WriteNumber("found", listed.Found);
        json.WriteNumber("all", listed.All);
        SoughtJson.Write(json, listed.Sought);
    }

    public static void Write(Utf8JsonWriter json, ImpressionListed listed)
    {
        var (work, sheet) = listed;
        json.WriteString("code", sheet.ShownCode);
        json.WriteString("number", work.NumberOf(sheet));
        json.WriteString("title", work.Title);
        json.WriteString("title_state", work.TitleState);
        json.Texts("makers", work.Makers.Select(maker => maker.FullName));
        json.WriteString("standing", sheet.Standing);
        json.WriteString("where", WhereInWords.Of(work, sheet));
        json.WriteString("whose", WhereInWords.OwnerOf(work, sheet));
        json.WriteNumber("work", work.Id);
        json.Whole("edition", work.EditionOf(sheet)?.Id);
    }

    /// <summary>How many of how many, and which of them stand above where not all do.</summary>
    private static string LastLine(ImpressionsListed listed, int skipped)
    {
        var count = $"{Counted.Figure(listed.Found)} of {Counted.Of(listed.All, "impression")}";

        return listed.Page.Count == listed.Found ? $"{count}."
            : listed.Page.Count == 0 ? $"{count}; none of them shown."
            : $"{count}; {Counted.Figure(skipped + 1L)} to {Counted.Figure((long)skipped + listed.Page.Count)} shown.";
    }
}
