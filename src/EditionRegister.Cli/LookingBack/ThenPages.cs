using EditionRegister.Domain.Sizes;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.LookingBack;

namespace EditionRegister.Cli;

/// <summary>The map, a list and an impression as they would have read at the end of a day.</summary>
internal static class ThenPages
{
    public static void Map(Printer printer, RegisterThen then, long edition)
    {
        var map = then.Map(edition);
        Print(printer, then, map.Differences, () => MapPage.Print(printer, map.Map), json => MapJson.Write(json, map.Map));
    }

    public static void List(Printer printer, RegisterThen then, ImpressionsWanted wanted)
    {
        var (listed, differences) = then.List(wanted);
        Print(printer, then, differences, () => ImpressionLists.PrintText(printer, listed, wanted.Skip), json => ImpressionLists.WriteAll(json, listed));
    }

    public static void Impression(Printer printer, RegisterThen then, string code, SizeStyle sizes)
    {
        var (seen, certificate, difference) = then.Impression(code);
        Print(
            printer,
            then,
            difference is null ? [] : [difference],
            () =>
            {
                ImpressionPage.Print(printer, seen, sizes);
                CertificateThen.Print(printer, certificate);
            },
            json =>
            {
                ImpressionJson.Write(json, seen);
                CertificateThen.Write(json, certificate);
            });
    }

    private static void Print(Printer printer, RegisterThen then, IReadOnlyList<KnownDifference> differences, Action text, Action<System.Text.Json.Utf8JsonWriter> json) => printer.Show(
        text: () =>
        {
            ThenPrinted.Heading(printer, then);
            text();
            ThenPrinted.Differences(printer, differences);
        },
        json: writer =>
        {
            json(writer);
            ThenPrinted.Write(writer, then, differences);
        });
}
