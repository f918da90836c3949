using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>What a file lists of one numbering.</summary>
internal sealed record ListedNumbering(NumberingPlan Plan, IReadOnlyList<ReadRow> Rows)
{
    public NumberingKind Kind => Plan.Kind;

    public Notation Notation => Plan.Notation;

    public int? Size => Plan.Size;

    /// <summary>Proofs that are stated beside the edition, of which no row lists one.</summary>
    public bool IsOnlyStated => Rows.Count == 0 && Kind != NumberingKind.Numbered;

    public bool Has(ReadRow row) => Rows.Any(one => ReferenceEquals(one, row));

    /// <summary>The number a row is given; null where it is not known. The one bon à tirer is the first of one.</summary>
    public int? OrdinalOf(ReadRow row) =>
        row.Number is null ? null : row.Number.Number ?? (Kind == NumberingKind.BonATirer && ReferenceEquals(Rows[0], row) ? 1 : null);
}
