namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Whose size it is that a statement names, and how many that are.</summary>
internal static class StatementSize
{
    /// <summary>The size beside a proof is the edition's: AP/160; A/P 3, edition of 75.</summary>
    public static bool IsOfTheEdition(EditionStatement said) =>
        said.Kind == StatementKind.Proof
        && (said.Of ?? said.Bounds?.Most) is { } size
        && ((said.Number is null && said.Letter is null) || said.Read.Any(part => EditionStatementReader.Read(said.Source[part]) is { Kind: StatementKind.Size } of && FigureOf(of) == size));

    /// <summary>The figure that stands for the size, sure or not; null where two are named.</summary>
    public static int? FigureOf(EditionStatement said) => said.Of ?? (said.Bounds is { Least: null, Most: var most } ? most : null);
}
