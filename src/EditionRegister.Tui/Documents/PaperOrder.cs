using EditionRegister.Domain.Documents;
using EditionRegister.Tui.Sheets;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>What papers are made of, and where they go.</summary>
/// <param name="Chosen">The sheets, and how they are called.</param>
/// <param name="Codes">Each of them by its code, in the order in which papers are made.</param>
internal sealed record PaperOrder(ChosenSheets Chosen, IReadOnlyList<string> Codes)
{
    /// <summary>Null only where the paper is none of labels.</summary>
    public LabelSheet? LabelSheet { get; init; }

    /// <summary>The first label that is still on the sheet, from one.</summary>
    public int From { get; init; } = 1;

    /// <summary>The folder the files go to; null is the register's exports folder.</summary>
    public string? Folder { get; init; }

    public ImpressionChoice Choice => Chosen.Choice;
}

/// <summary>What was written: a sentence, the files by their whole paths, and what to mind about them.</summary>
internal sealed record Written(string Sentence, IReadOnlyList<string> Files, string? Mind = null);
