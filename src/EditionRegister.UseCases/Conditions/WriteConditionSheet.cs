using EditionRegister.Domain;
using EditionRegister.Domain.Conditions;
using EditionRegister.Store;
using EditionRegister.UseCases.Documents;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Conditions;

/// <summary>Writes a condition report as a paper to sign.</summary>
public sealed class WriteConditionSheet(RegisterStore store, RegisterSettings settings)
{
    /// <param name="code">The sheet.</param>
    /// <param name="report">Which of its reports, from one; the newest when not said.</param>
    /// <exception cref="RefusedException">code-not-found, no-condition-report or condition-report-not-found.</exception>
    public IReadOnlyList<string> Lines(string code, int? report = null)
    {
        LookAround look = new(store);
        var seen = look.Impression(code);
        var reports = seen.Impression.ConditionReports;

        if (reports.Count == 0)
        {
            throw ConditionRefusals.NoReport(seen.Impression);
        }

        var meant = report is { } ordinal ? reports.FirstOrDefault(one => one.Ordinal == ordinal) ?? throw ConditionRefusals.NoSuchReport(seen.Impression, ordinal) : reports[^1];

        return ConditionSheet.Lines(seen.Work, seen.Impression, meant, settings.Name, settings.Sizes);
    }

    /// <summary>Answers the path written.</summary>
    /// <exception cref="RefusedException">As for the lines; and output-not-written.</exception>
    public string Run(string code, string path, int? report = null)
    {
        var lines = Lines(code, report);

        return Output.Write(path, stream =>
        {
            using StreamWriter writer = new(stream, leaveOpen: true) { NewLine = "\n" };

            foreach (var line in lines)
            {
                writer.WriteLine(line);
            }
        });
    }
}
