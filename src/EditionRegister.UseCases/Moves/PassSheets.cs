using EditionRegister.Domain.Chains;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>Records that sheets passed to another owner without being sold: given, exchanged or bequeathed.</summary>
public sealed class PassSheets(RegisterStore store)
{
    /// <param name="choice">Which sheets.</param>
    /// <param name="to">To whom, as in the address book; null is somebody nobody knows.</param>
    /// <param name="from">The owner; null is the maker, and for a bequest whoever owns them.</param>
    /// <param name="passing">The rest; whom it names itself is found from the two before.</param>
    /// <exception cref="Domain.RefusedException">not-theirs-to-sell, sold-already, reserved-for-another, and others of <see cref="ChainRefusals"/>.</exception>
    public int Run(ImpressionChoice choice, string? to, string? from, Passing passing) => DeedOnChosen.Run(store, Deed(passing.Kind), choice, (writing, chosen, deed) =>
    {
        var dated = passing with { To = Find(to), From = Find(from), Date = passing.Date.IsKnown ? passing.Date : Today.Of(store) };

        foreach (var (sheets, owner) in PassingWithCopy.Of(chosen, dated.From, dated.To))
        {
            (dated with { From = owner }).Record(chosen.Work, sheets, deed);
        }

        foreach (var sheet in PassingWithCopy.Theirs(chosen, dated.To).Where(sheet => dated.Collected && sheet.Where != Position.With(dated.To!.Value)))
        {
            WhereaboutsDeeds.HandOver(chosen.Work, sheet, sheet.Whose!, dated.Date, note: null, deed);
        }

        long? Find(string? who) => who is null ? null : Persons.Find(writing.Read.Book, who);
    });

    private static string Deed(MoveKind kind) => kind == MoveKind.Exchanged ? "exchange" : kind == MoveKind.Bequeathed ? "bequeath" : "give";
}
