using System.Text.Json;
using EditionRegister.Domain.Integrity;

namespace EditionRegister.Cli;

/// <summary>One finding, as people and as machines read it.</summary>
internal static class FindingText
{
    public static void Print(Printer printer, Finding finding)
    {
        printer.Line($"{finding.Severity.Word} {finding.Rule}: {finding.Subject}");
        printer.Line($"  {finding.Message}");
        printer.Line($"  Basis: {finding.Basis}");
        printer.Line($"  Remedy: {finding.Remedy}");

        if (finding.Handle is { } handle)
        {
            printer.Line($"  Handle: {handle}");
        }

        printer.Line();
    }

    /// <summary>What was accepted, briefly and apart; nothing where nothing was.</summary>
    public static void PrintAccepted(Printer printer, IReadOnlyCollection<Finding> findings)
    {
        if (findings.Count == 0)
        {
            return;
        }

        printer.Line("Accepted:");

        foreach (var finding in findings)
        {
            var accepted = finding.Accepted!;
            printer.Line($"  {finding.Handle} {finding.Severity.Word} {finding.Rule}: {finding.Message}");
            printer.Line($"    {accepted.On}{(accepted.By is { } by ? $", {by}" : "")}: {accepted.Reason}");
        }

        printer.Line();
    }

    /// <param name="printer">Where to print.</param>
    /// <param name="handle">One of the findings that could be accepted, or null where there is none.</param>
    public static void PrintWayToAccept(Printer printer, string? handle)
    {
        if (handle is not null)
        {
            printer.Line($"What is as it should be can be accepted by its handle, with the reason: `edreg accept {handle} --reason \"...\"`.");
        }
    }

    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("severity", finding.Severity.Word);
        json.WriteString("rule", finding.Rule);
        json.WriteStartObject("subject");
        json.WriteString("kind", finding.Subject.Kind);
        json.WriteNumber("id", finding.Subject.Id);
        json.WriteString("name", finding.Subject.Name);
        json.WriteEndObject();
        json.WriteString("message", finding.Message);
        json.WriteString("basis", finding.Basis);
        json.WriteString("remedy", finding.Remedy);
        json.WriteString("handle", finding.Handle);

        if (finding.Accepted is { } accepted)
        {
            json.WriteStartObject("accepted");
            json.Date("date", accepted.On);
            json.WriteString("reason", accepted.Reason);
            json.WriteString("by", accepted.By);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("accepted");
        }
    }
}
