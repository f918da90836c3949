using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Impressions;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Sheets;

/// <summary>The sheets a deed is about as they lay there when its key was pressed, and what the register knows to suggest.</summary>
internal sealed record SheetsAtHand(string Called, IReadOnlyList<ChosenOfWork> Works, Domain.People.AddressBook Book, Suggested Known, RegisterSettings Settings)
{
    private const int MostPlacesNamed = 3;

    public IReadOnlyList<(Work Work, Impression Sheet)> Pairs { get; } = [.. Works.SelectMany(chosen => chosen.Sheets.Select(sheet => (chosen.Work, sheet)))];

    public IEnumerable<Impression> Sheets => Pairs.Select(pair => pair.Sheet);

    public int Count => Pairs.Count;

    public (Work Work, Impression Sheet) First => Pairs[0];

    public bool IsOne => Count == 1;

    /// <summary>These very sheets, whatever the deed changes about where or how they are found.</summary>
    public ImpressionChoice ByCode { get; } = new() { Sheets = string.Join(", ", Works.SelectMany(chosen => chosen.Sheets).Select(sheet => sheet.ShownCode)) };

    public SheetsAsSeen AsSeen { get; } = new(Works.SelectMany(chosen => chosen.Sheets));

    /// <summary>How many and where they are, for the head of a form.</summary>
    public string About
    {
        get
        {
            if (IsOne)
            {
                return $"{First.Sheet.ShownCode}, {WhereInWords.Of(First.Work, First.Sheet)}; belongs to {WhereInWords.OwnerOf(First.Work, First.Sheet)}.";
            }

            var places = Pairs.GroupBy(pair => WhereInWords.Of(pair.Work, pair.Sheet)).ToList();
            var named = places.Take(MostPlacesNamed).Select(place => places.Count == 1 ? place.Key : $"{Counted.Figure(place.Count())} {place.Key}");
            var more = places.Skip(MostPlacesNamed).Sum(place => place.Count());

            return $"{Counted.Sheets(Count)}: {string.Join(", ", named)}{(more > 0 ? $", {Counted.Figure(more)} elsewhere" : "")}.";
        }
    }

    /// <summary>What a fact of the sheets is where it is the same of all; else nothing.</summary>
    public (bool IsSame, T? Value) Same<T>(Func<Impression, T> fact)
    {
        var values = Sheets.Select(fact).Distinct().Take(2).ToList();

        return values is [var one] ? (true, one) : (false, default);
    }

    /// <exception cref="RefusedException">Something chosen is not there any more.</exception>
    public static Task<SheetsAtHand> ReadAsync(Desk desk, ChosenSheets chosen) => desk.Store.Do(register =>
        new SheetsAtHand(chosen.Called, register.LookAround.Chosen(chosen.Choice), register.LookAround.Book(), register.LookAround.Suggestions(), register.Settings));
}
