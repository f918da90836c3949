using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>The plan chest as somebody sees it who leafs through all works whole, sheet by sheet: slow, and by other means than the chest's own.</summary>
internal sealed class LeafedThrough
{
    private readonly OwnWords _own;
    private readonly List<Leaf> _leaves;

    public LeafedThrough(Register register) => (_own, _leaves) = (register.LookAround.OwnWords(), 
    [
        .. from work in register.LookAround.Works()
           from edition in work.Editions.Cast<Edition?>().DefaultIfEmpty()
           let first = edition == work.Editions.MinBy(one => one.Ordinal)
           orderby work.Makers.FirstOrDefault() is null, Sorted(work.Makers.FirstOrDefault()?.SortName ?? work.Makers.FirstOrDefault()?.FullName), work.ShownTitle == "[unknown]", Sorted(work.ShownTitle),
               work.Id, edition?.Ordinal
           select new Leaf(work, edition, [.. work.Impressions.Where(sheet => work.EditionOf(sheet) is { } of ? of == edition : first)]),
    ]);

    /// <summary>Every bit of text that a line is found by, folded, of all lines.</summary>
    public IReadOnlyList<string> Bits => [.. _leaves.SelectMany(leaf => leaf.Bits).Concat(_leaves.SelectMany(leaf => leaf.Sheets).Select(sheet => sheet.ShownCode)).Distinct()];

    public IEnumerable<ChestLine> Find(string text) => Find(Sought.Read(text, _own));

    public IEnumerable<ChestLine> Find(Sought sought) => _leaves.Where(leaf => leaf.Holds(sought)).Select(leaf => leaf.Line);

    /// <summary>The sheets that a list of sheets finds: where they lie counts, and not who has or owns them.</summary>
    public IEnumerable<long> Sheets(Sought sought) => from leaf in _leaves from sheet in leaf.Sheets where leaf.Meets(sheet, sought) select sheet.Id;

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

        public bool Holds(Sought sought) => sought.Parts.All(part => part.Words.All(Holds) || HasNumber(part.Number) || IsOf(part.Dates) || part.MeansTechniques(Techniques));

        private bool Holds(string word) =>
            Bits.Any(bit => bit.Contains(SearchText.Fold(word), StringComparison.Ordinal))
            || (SearchText.Fold(word).Length >= 3 && Written.Any(text => text.Contains(SearchText.Fold(word), StringComparison.Ordinal)))
            || Sheets.Any(sheet => sheet.Code.Contains(word.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));

        /// <summary>The sheet by itself: its own number, run and edition.</summary>
        public bool Meets(Impression sheet, Sought sought) => sought.Parts.All(part =>
            part.Words.All(word => Holds(sheet, word)) || part.Number?.Fits(Work, sheet) is true || part.MeansTechniques(Techniques)
            || (part.Dates is { } dates && (dates.Meets(Work.Year) || dates.Meets(Work.RunOf(sheet)!.Printed) || (Work.EditionOf(sheet) is { } edition && dates.Meets(edition.Declared)))));

        private bool Holds(Impression sheet, string word)
        {
            var folded = SearchText.Fold(word);
            string[] bits = [Work.ShownTitle, Work.ShownMaker, sheet.Where?.Place is { } place ? Work.Book.PathOf(place) : "", .. Work.Makers.Select(maker => maker.ClassCode ?? "")];

            return bits.Any(bit => SearchText.Fold(bit).Contains(folded, StringComparison.Ordinal))
                || (folded.Length >= 3 && Written.Any(text => text.Contains(folded, StringComparison.Ordinal)))
                || sheet.Code.Contains(word.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        }

        private IEnumerable<string> Written => new[] { Work.Year.Text, Work.Technique }.OfType<string>().Select(SearchText.Fold);

        private IReadOnlyList<string> Techniques =>
            Work.Techniques.Count > 0 ? [.. Work.Techniques.Select(one => one.Technique)] : [.. TechniqueReader.Read(Work.Technique).Techniques.Select(technique => technique.Word)];

        private bool HasNumber(SoughtNumber? number) => number is not null
            && ((Edition?.Numberings ?? []).Any(numbering => numbering.Numbers.Any(place => number.Fits(numbering, place.Ordinal))) || Sheets.Any(sheet => number.Fits(Work, sheet)));

        private bool IsOf(SoughtDates? dates) => dates is not null
            && (dates.Meets(Work.Year) || (Edition is not null && dates.Meets(Edition.Declared)) || Runs.Any(run => dates.Meets(run.Printed)));

        private IEnumerable<PrintRun> Runs => Work.Runs.Where(run =>
            Sheets.Any(sheet => sheet.Run == run.Id) || (Edition == Work.Editions.MinBy(one => one.Ordinal) && Work.Impressions.All(sheet => sheet.Run != run.Id)));
    }
}
