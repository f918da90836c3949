using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>The plan chest as somebody sees it who leafs through all works whole, sheet by sheet: slow, and by other means than the chest's own.</summary>
internal sealed class LeafedThrough
{
    private readonly List<Leaf> _leaves;

    public LeafedThrough(Register register) => _leaves =
    [
        .. from work in register.LookAround.Works()
           from edition in work.Editions.Cast<Edition?>().DefaultIfEmpty()
           let first = edition == work.Editions.MinBy(one => one.Ordinal)
           orderby work.Makers.FirstOrDefault() is null, Sorted(work.Makers.FirstOrDefault()?.SortName ?? work.Makers.FirstOrDefault()?.FullName), work.ShownTitle == "[unknown]", Sorted(work.ShownTitle),
               work.Id, edition?.Ordinal
           select new Leaf(work, edition, [.. work.Impressions.Where(sheet => work.EditionOf(sheet) is { } of ? of == edition : first)]),
    ];

    /// <summary>Every bit of text that a line is found by, folded, of all lines.</summary>
    public IReadOnlyList<string> Bits => [.. _leaves.SelectMany(leaf => leaf.Bits).Concat(_leaves.SelectMany(leaf => leaf.Sheets).Select(sheet => sheet.ShownCode)).Distinct()];

    public IEnumerable<ChestLine> Find(string text) => _leaves.Where(leaf => leaf.Holds(text)).Select(leaf => leaf.Line);

    private static SortedText Sorted(string? text) => new(SearchText.Fold(text ?? ""));

    private sealed record SortedText(string Text) : IComparable<SortedText>
    {
        public int CompareTo(SortedText? other) => string.CompareOrdinal(Text, other?.Text);
    }

    private sealed record Leaf(Work Work, Edition? Edition, IReadOnlyList<Impression> Sheets)
    {
        public IEnumerable<string> Bits => new[] { Work.ShownTitle, Work.ShownMaker }
            .Concat(Work.Makers.Select(maker => maker.ClassCode ?? ""))
            .Concat(Sheets.Where(sheet => sheet.Where?.Place is not null).Select(sheet => Work.Book.PathOf(sheet.Where!.Place)))
            .Concat(Sheets.Select(sheet => Work.Book.Person(sheet.Where?.Holder)?.FullName ?? ""))
            .Concat(Sheets.Select(sheet => Work.Book.Person(sheet.Whose?.Person)?.FullName ?? ""))
            .Select(SearchText.Fold)
            .Distinct();

        public ChestLine Line
        {
            get
            {
                var counted = Sheets.Where(sheet => Edition is null || Work.EditionOf(sheet) == Edition).ToList();
                var sold = counted.Where(sheet => sheet.Ownership is [.., { Kind: "sold" }]).ToList();
                var ours = counted.Except(sold).Where(sheet => sheet.Where is { State: "placed" } || Work.Makers.Any(maker => maker.Id == sheet.Where?.Holder)).ToList();
                var others = counted.Except(sold).Except(ours).Where(sheet => sheet.Where is { State: "with" });

                return new ChestLine(
                    Edition?.Id, Work.Id, Edition?.Ordinal ?? 0, Work.ShownTitle, Work.ShownMaker, Work.Year.Text, Work.Technique, Edition?.Kind ?? "", Edition?.Extent ?? "", Edition?.Closed ?? "",
                    Edition is null ? "" : NumberingsInShort.Of(Edition), counted.Count, ours.Count, others.Count(), sold.Count);
            }
        }

        public bool Holds(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(word =>
            Bits.Any(bit => bit.Contains(SearchText.Fold(word), StringComparison.Ordinal))
            || Sheets.Any(sheet => sheet.Code.Contains(word.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase)));
    }
}
