using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Documents;

/// <summary>A kind of paper: how it is looked at before anything is written, and how it is written.</summary>
/// <param name="key">With which it is picked.</param>
/// <param name="name">As the list of kinds shows it.</param>
internal abstract class Paper(string key, string name)
{
    public static IReadOnlyList<Paper> All { get; } =
    [
        new CertificatePaper("c", "certificates: issue and write", supersede: false),
        new CertificateAgainPaper(),
        new CertificatePaper("s", "certificates that take the place of those that stand", supersede: true),
        new LabelPaper(),
        new PencilPaper(),
        new InventoryPaper("i", "inventory as CSV, without owners: to hand out", owners: false),
        new InventoryPaper("o", "inventory as CSV with owners: for your own books", owners: true),
    ];

    public string Key { get; } = key;

    public string Name { get; } = name;

    /// <summary>Whether it is printed on label sheets.</summary>
    public virtual bool IsOnLabels => false;

    /// <summary>Whether there is a file to write; else it is only read.</summary>
    public virtual bool IsWritten => true;

    /// <summary>What is asked before it is written, where writing changes the register; null asks nothing.</summary>
    public virtual string? Asked(PaperOrder order) => null;

    /// <summary>What it will be, leaf by leaf; at least one.</summary>
    /// <exception cref="Domain.RefusedException">It cannot be made of these sheets.</exception>
    public abstract Task<PreviewLeaves> PreviewAsync(Desk desk, PaperOrder order);

    /// <exception cref="Domain.RefusedException">It cannot be made of these sheets, or the file cannot be written.</exception>
    public abstract Task<Written> WriteAsync(Desk desk, PaperOrder order);

    /// <summary>Opens the preview.</summary>
    public async Task<Opening?> LookAsync(Desk desk, PaperOrder order) => new PreviewPage(desk, this, order, await PreviewAsync(desk, order));
}

/// <summary>A preview: what holds for all of it, and its leaves.</summary>
/// <param name="Sum">In a sentence or two.</param>
/// <param name="Leaves">At least one.</param>
internal sealed record PreviewLeaves(string Sum, IReadOnlyList<PreviewLeaf> Leaves)
{
    /// <summary>The sheets of which it can be made, by their codes.</summary>
    public IReadOnlyList<string> Fitting => [.. Leaves.Where(leaf => leaf.IsMade).Select(leaf => leaf.Of)];
}

/// <summary>What one certificate, label or row will say.</summary>
/// <param name="Of">Which one it is.</param>
/// <param name="Text">Its lines on a screen of that many columns.</param>
/// <param name="IsMade">Whether it can be made; else its lines say why not.</param>
internal sealed record PreviewLeaf(string Of, Func<int, IEnumerable<Line>> Text, bool IsMade = true);
