using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

internal static class EditionProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("edition-not-found", studio => studio.Register.CloseEdition.Run(77)),
        new("numbering-missing", studio => Declare(studio, 3, "limited")),
        new("numbering-not-read", studio => Declare(studio, 3, "limited", "1-4, 6")),
        new("edition-words-not-read", studio => Declare(studio, 3, "limited", "edition of 75 plus 3 working proofs")),
        new("edition-words-not-read", studio => Declare(studio, 3, "limited", "S/P 3/10")),
        new("edition-words-not-read", studio => Declare(studio, 3, "limited", "Exemplar 3/40")),
        new("edition-words-not-read", studio => Declare(studio, 3, "limited", "edition of 75, 200 in all")),
        new("edition-words-not-read", studio => Declare(studio, 3, "limited", "unnumbered")),
        new("size-not-sure", studio => Declare(studio, 3, "limited", "edition of at least 49")),
        new("numbering-from-one", studio => Declare(studio, 3, "limited", "2-12")),
        new("numbering-twice", studio => Declare(studio, 3, "limited", "1-12", "1-20")),
        new("limited-needs-size", studio => Declare(studio, 3, "limited", "open")),
        new("open-has-no-size", studio => Declare(studio, 3, "open", "1-12")),
        new("unique-is-one", studio => Declare(studio, 3, "unique", "1-2")),
        new("edition-stands-already", studio => Declare(studio, 1, "limited", "1-12")),
        new("reduction-never-grows", studio => Declare(studio, 2, "limited", "1-12")),
        new("reduction-edition-stands", studio =>
        {
            Declare(studio, 2, "limited", "1-3");
            Declare(studio, 2, "limited", "1-3");
        }),
        new("edition-never-grows", studio => studio.Register.MendSize.Run(1, NumberingPlan.Read("1-5"))),
        new("number-in-use", studio => studio.Register.MendSize.Run(1, NumberingPlan.Read("1-1"))),
        new("numbering-not-found", studio => studio.Register.MendSize.Run(1, NumberingPlan.Read("H.C. A-C"))),
        new("numbering-not-found", studio =>
        {
            Declare(studio, 3, "unknown", "A/P I-II");
            studio.Register.GiveNumbers.AsPiled(5, null, null);
        }),
        new("edition-closed-already", studio => studio.Register.CloseEdition.Run(2)),
        new("edition-not-ours-whole", studio => studio.Register.CloseEdition.Run(3)),
        new("edition-not-accounted-for", studio => studio.Register.CloseEdition.Run(1)),
        new("edition-whole-already", studio => studio.Register.MakeEditionWhole.Run(1)),
        new("edition-not-all-known", studio =>
        {
            studio.Register.DeclareEdition.Run(3, new NewEdition { Extent = "partly-known", Numberings = [NumberingPlan.Read("1-3")] });
            studio.Register.MakeEditionWhole.Run(5);
        }),
        new("note-missing", studio => studio.Register.StateNumberFate.Run(1, "4", "void", null)),
        new("number-is-given", studio => studio.Register.StateNumberFate.Run(1, "2", "never-printed", null)),
        new("number-beyond-size", studio => studio.Register.StateNumberFate.Run(1, "5", "never-printed", null)),
        new("all-numbers-given", studio => studio.Register.GiveNumbers.AsPiled(1, "A/P I-II", Pile(1, "3, 4, 6"))),
        new("no-sheet-to-number", studio =>
        {
            Declare(studio, 3, "limited", "1-4");
            studio.Register.GiveNumbers.AsPiled(5, null, null);
        }),
        new("counts-differ", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "3-4"), "4")),
        new("number-given-already", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "3"), "2")),
        new("number-named-twice", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "3-4"), "4, 4")),
        new("number-not-open", studio =>
        {
            studio.Register.StateNumberFate.Run(1, "4", "void", "Torn by the blanket.");
            studio.Register.GiveNumbers.ByHand(1, Pile(1, "3"), "4");
        }),
        new("sheet-not-kept", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "5"), "4")),
        new("sheet-not-kept", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "6"), "4")),
        new("sheet-numbered-already", studio => studio.Register.GiveNumbers.ByHand(1, Pile(1, "2"), "4")),
        new("sheet-of-another-work", studio => studio.Register.GiveNumbers.ByHand(1, Pile(2, "1"), "4")),
        new("number-stays", studio => studio.Register.GiveNumbers.TakeBack(Pile(1, "1"))),
    ];

    private static void Declare(Studio studio, long work, string kind, params string[] numberings) =>
        studio.Register.DeclareEdition.Run(work, new NewEdition { Kind = kind, Numberings = [.. numberings.SelectMany(text => NumberingPlans.Read(text, OwnWords.None).Plans)] });
}
