namespace EditionRegister.Tui.Pages;

/// <summary>One cell of a tray: a short label, the letter that says where it is, and a sign where something was found.</summary>
/// <param name="Label">The number, or a code.</param>
/// <param name="Letter">One letter of the legend.</param>
/// <param name="Sign">! where a finding is, else a blank.</param>
/// <param name="IsMarked">Chosen for what is done next.</param>
/// <param name="Tone">Beside the sign, never instead of it.</param>
internal sealed record TrayCell(string Label, char Letter, char Sign = ' ', bool IsMarked = false, Tone Tone = Tone.Plain);

/// <summary>Cells that belong together, under a heading.</summary>
internal sealed record TrayGroup(string Heading, IReadOnlyList<TrayCell> Cells);

/// <summary>One line of a tray: a heading, or the cells from one index on.</summary>
internal readonly record struct TrayRow(int Group, int FirstCell, int Cells)
{
    public bool IsHeading => Cells == 0;
}
