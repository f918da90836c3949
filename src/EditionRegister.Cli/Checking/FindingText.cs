using System.Text.Json;
using EditionRegister.Domain.Integrity;

namespace EditionRegister.Cli;

/// <summary>One finding, as people and as machines read it.</summary>
internal static class FindingText
{
    public static void Print(Printer printer, Finding finding)
    {
        printer.Line($"{Word(finding.Severity)} {finding.Rule}: {finding.Subject}");
        printer.Line($"  {finding.Message}");
        printer.Line($"  Basis: {finding.Basis}");
        printer.Line($"  Remedy: {finding.Remedy}");
        printer.Line();
    }

    public static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteString("severity", Word(finding.Severity));
        json.WriteString("rule", finding.Rule);
        json.WriteStartObject("subject");
        json.WriteString("kind", finding.Subject.Kind);
        json.WriteNumber("id", finding.Subject.Id);
        json.WriteString("name", finding.Subject.Name);
        json.WriteEndObject();
        json.WriteString("message", finding.Message);
        json.WriteString("basis", finding.Basis);
        json.WriteString("remedy", finding.Remedy);
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Contradiction => "contradiction",
        Severity.Query => "query",
        _ => "note",
    };
}
