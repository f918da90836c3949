using EditionRegister.Domain.Reading.Search;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Works;

namespace EditionRegister.Tui.Bench;

/// <summary>Works and their print runs, and how far each has come from the press to the last signature.</summary>
internal sealed class BenchPage(Desk desk) : ListPage
{
    private static readonly ListColumn[] Columns = [new("title", 18, Stretch: 3), new("maker", 12, Stretch: 2), new("printed", 10), new("how far", 27)];

    private IReadOnlyList<OnBench> _all = [];
    private List<OnBench> _found = [];
    private HashSet<long> _printedAgain = [];
    private Sought _sought = Sought.Everything;
    private Listing _rows = Listing.Of<OnBench>(Columns, [], _ => []);

    public override string Title => "Bench";

    public override string Explains =>
        "The bench is where prints are made into an edition: record the work, what it is printed from and a print run; sort the dry pulls one by one; "
        + "see the declaration before it is made; then give the numbers and sign sheet by sheet. Each line is a print run, or a work that has none yet, the newest first. "
        + "The last column says how far it is; Enter opens the work, and there a line says what comes next.";

    public override Listing Rows => _rows;

    public override string Empty => Filter.Length > 0
        ? "No work is called so or made so, and no maker. Esc shows all."
        : "Nothing lies on the bench yet. Press n to record your first work: its title and who made it. The block or plate, the print run and its sheets follow on the work's own page.";

    public override string? FindsIn => "title, maker, date or technique";

    public override string? Understood => SoughtSaid.Short(_sought);

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        .. Here is { } here
            ? new KeyDeed[]
            {
                KeyDeed.Opens("Enter", "open the work", () => new WorkPage(desk, here.Work)),
                new("r", "add a print run", () => RunForms.NewAsync(desk, here.Work))
                {
                    Explained = "Adds a print run to the work of the current line: what was counted and measured; every sheet of its pile gets a code.",
                },
            }
            : [],
        new("n", "record a work", () => WorkForms.NewAsync(desk)),
        KeyDeed.Opens("k", "see the rack", () => new RackPage(desk)) with { Explained = "Shows which sheets lie on the drying rack, and from when they are dry." },
        new("p", "plan sheets", () => PlanForm.OfAsync(desk)) { Explained = "Works out how many sheets to start so that enough come out good, and how much paper that is; records nothing." },
    ];

    private OnBench? Here => _found.Count > 0 ? _found[Current] : null;

    public override async Task RefreshAsync()
    {
        _all = await desk.Store.Do(register => register.ListBench.Run());
        _printedAgain = [.. _all.CountBy(one => one.Work).Where(same => same.Value > 1).Select(same => same.Key)];
        Filtered();
    }

    protected override void Filtered()
    {
        _sought = Sought.Read(Filter).WithoutNumbers();
        _found = [.. _all.Where(one => _sought.Parts.All(part => IsMet(one, part)))];
        _rows = Listing.Of(Columns, _found, one => [Titled(one), one.Maker, Printed(one), one.HowFar]);
    }

    private static bool IsMet(OnBench one, SoughtPart part) =>
        part.Words.All(word => Holds($"{one.Title} {one.Maker}", word) || (word.Length >= SaidOfWork.LeastLength && Holds($"{one.Technique} {string.Join(' ', one.Dates.Select(date => date.Text))}", word)))
        || (part.Dates is { } dates && one.Dates.Any(dates.Meets))
        || part.MeansTechniques(one.Techniques);

    private static bool Holds(string text, string word) => SearchText.Fold(text).Contains(SearchText.Fold(word), StringComparison.Ordinal);

    /// <summary>Harbour; Harbour, run 2 where it was printed more than once.</summary>
    private string Titled(OnBench one) => one.Run is { } run && _printedAgain.Contains(one.Work) ? $"{one.Title}, run {Counted.Figure(run)}" : one.Title;

    /// <summary>Of several days the last: then the pile was complete.</summary>
    private static string Printed(OnBench one) => one.Printed.Split('/') is [.., var last] && last is not ("" or "..") ? last : one.Printed;
}
