using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Lawful deeds drawn at random over every table and fact of the catalogue, written through the one writer.</summary>
internal sealed class GeneratedHistory
{
    private readonly Draw _draw;
    private readonly RegisterStore _store;
    private readonly (string Deed, Func<Action<Writing>?> Plan)[] _plans;
    private readonly List<(string Deed, Func<Action<Writing>?> Plan)> _notYet;

    public GeneratedHistory(RegisterStore store, string seed)
    {
        _store = store;
        _draw = new Draw(seed);
        Known known = new();
        PeopleDeeds people = new(known, _draw);
        WorkDeeds works = new(known, _draw);
        EditionDeeds editions = new(known, _draw);
        ChainDeeds chains = new(known, _draw);
        SheetDeeds sheets = new(known, _draw, chains);
        PaperDeeds papers = new(known, _draw, sheets);
        ShowDeeds shows = new(known, _draw);
        BenchDeeds bench = new(known, _draw);
        SortingTableDeeds table = new(known, _draw);
        SetDeeds sets = new(known, _draw);
        ConditionDeeds conditions = new(known, _draw);
        StockDeeds stock = new(known, _draw);

        _plans =
        [
            ("add-person", people.AddPerson), ("add-place", people.AddPlace), ("add-work", works.AddWork), ("add-work", works.AddWork), ("add-class", people.AddClass),
            ("grow-lists", people.GrowLists), ("declare", editions.Declare), ("pull", sheets.Pull), ("sort", sheets.Sort), ("pull", sheets.Pull), ("sort", sheets.Sort), ("sort", sheets.Sort), ("sort", sheets.Sort),
            ("number", sheets.Number), ("move", chains.Move), ("sell", chains.Sell), ("inscribe", sheets.Inscribe), ("issue", papers.Issue), ("read-in", papers.ReadIn),
            ("edit-person", people.EditPerson), ("note-person", people.NotePerson), ("erase-person", people.ErasePerson), ("edit-place", people.EditPlace),
            ("erase-place", people.ErasePlace), ("edit-work", works.EditWork), ("read-technique", works.ReadTechnique), ("add-role", works.AddRole), ("drop-role", works.DropRole),
            ("add-matrix", works.AddMatrix), ("edit-matrix", works.EditMatrix), ("add-run", works.AddRun), ("edit-run", works.EditRun),
            ("edit-edition", editions.EditEdition), ("grow", editions.Grow), ("decide-fate", editions.DecideFate), ("sign", sheets.Sign), ("price", sheets.Price),
            ("unscribe", sheets.Unscribe), ("put-right", chains.PutRight), ("take-back", chains.TakeBack), ("withdraw", papers.Withdraw), ("label", papers.Label), ("undo", papers.Undo),
            ("make-show", shows.Make), ("add-to-show", shows.Add), ("remove-from-show", shows.Remove), ("edit-show", shows.Edit), ("erase-show", shows.Erase),
            ("accept-finding", shows.Accept), ("take-acceptance-back", shows.TakeBack), ("erase-acceptance", shows.EraseAcceptance),
            ("name-state", bench.NameState), ("give-matrix-code", bench.GiveCode), ("record-pass", bench.AddPass), ("edit-pass", bench.EditPass), ("follow", bench.Follow),
            ("grade", table.Grade), ("link-sheets", table.Link), ("change-sheet", table.Change), ("entitle", sets.Entitle), ("make-set", sets.Make), ("collate", sets.Collate),
            ("reserve", stock.Reserve), ("lift", stock.Lift), ("take-stock", stock.Take), ("add-picture", conditions.Show), ("take-picture-off", conditions.TakeOff),
            ("grow-terms", conditions.GrowTerms), ("examine", conditions.Examine), ("erase-picture", conditions.ErasePicture),
        ];
        _notYet = [.. _plans];
    }

    /// <summary>Adds deeds: one of each kind as soon as it can be done, else whichever is drawn.</summary>
    public GeneratedHistory Add(int deeds)
    {
        while (deeds > 0)
        {
            if (Try(_notYet.FirstOrDefault(one => one.Plan() is not null)) || Try(_draw.Of(_plans)))
            {
                deeds--;
            }
        }

        return this;
    }

    private bool Try((string Deed, Func<Action<Writing>?> Plan) one)
    {
        if (one.Plan?.Invoke() is not { } change)
        {
            return false;
        }

        _notYet.Remove(one);
        _store.Write(one.Deed, writing =>
        {
            change(writing);

            return true;
        });

        return true;
    }
}
