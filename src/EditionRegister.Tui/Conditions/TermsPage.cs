using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Conditions;

/// <summary>The words for what can be the matter with a sheet, and what they mean.</summary>
internal sealed class TermsPage(Desk desk) : ListPage
{
    private const string Word = "Word";
    private const string Name = "Name";

    private static readonly ListColumn[] Columns = [new("term", 18), new("what one sees", 50, Stretch: 1)];

    private IReadOnlyList<ConditionTerm> _all = [];
    private IReadOnlyList<ConditionTerm> _found = [];

    public override string Title => "Words for a condition";

    public override string Explains =>
        "The words in which the condition of paper is described, with what one sees. Use the narrowest that fits; “other” with a note says what none of them says. n adds a word of your own, which stays for good.";

    public override Listing Rows => Listing.Of(Columns, _found, term => [term.Word, Meaning(term)]);

    public override string Empty => "No word is found by that.";

    public override string? FindsIn => "word or meaning";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("n", "add a word", NewForm) with { Explained = "Adds a word of your own; it cannot be taken away again." },
        KeyDeed.Opens("Esc", "go back", () => Back.Once),
    ];

    public override IReadOnlyList<Line> Foot(int width) => _found.Count == 0 ? [] :
        [Line.Empty, .. Wrap.Of($"{_found[Current].Name}: {Meaning(_found[Current])}. {_found[Current].Care}", width).Take(3).Select(line => Line.Of(line, Tone.Quiet))];

    public override async Task RefreshAsync()
    {
        _all = await desk.Store.Do(register => register.LookAround.ConditionTerms());
        Filtered();
    }

    protected override void Filtered()
    {
        var words = SearchText.Fold(Filter).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        _found = [.. _all.Where(term => words.All(word => SearchText.Fold($"{term.Word} {term.Name} {term.Meaning}").Contains(word, StringComparison.Ordinal)))];
    }

    private static string Meaning(ConditionTerm term) => term.Meaning.Length > 0 ? term.Meaning : "a term of this register's own";

    private Form NewForm() => new(
        "A word of your own",
        [new Field(Word) { IsNeeded = true, Form = "small letters and hyphens: frame-rub" }, new Field(Name) { Form = "as reports show it: rubbed by the frame" }],
        async form =>
        {
            await desk.Store.Do(register => register.RecordConditionTerm.Run(form[Word]!, form[Name]));

            return new Saved(ConditionSaid.TermAdded(form[Word]!, form[Name] ?? Called.Plain(form[Word]!)));
        })
    {
        OwnEachTime = [Word, Name],
    };
}
