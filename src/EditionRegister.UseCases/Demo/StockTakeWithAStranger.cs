using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Stock;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.UseCases.Demo;

/// <summary>Stock is taken of a drawer: all is there but one sheet, and one is there that belongs to the drawer above; both are settled.</summary>
internal sealed class StockTakeWithAStranger(Register register, ScenarioClock clock)
{
    public const string Drawer = "Studio › Plan chest › Drawer 2";
    public const string MissingTitle = "Tide Table";

    public void Tell()
    {
        clock.OnTo(2026, 11, 23);
        var works = register.LookAround.Works();
        var missing = works.First(work => work.Title == MissingTitle).Impressions[^1].ShownCode;
        var stranger = register.LookAround.Chosen(new ImpressionChoice { Work = works.First(work => work.Title == CoastalStudio.Reduction).Id, Pile = "16" })[0].Sheets[0].ShownCode;
        var place = UseCases.People.Places.Find(register.LookAround.Book(), Drawer);
        var there = register.LookAround.StockToCount(place, alone: false).Things.Select(thing => thing.Code).Where(code => code != missing);

        var take = register.TakeStock.Run(
            new StockToTake { Place = Drawer, Date = RecordedDate.Read("2026-11-23"), Person = CoastalStudio.Maker, Note = "before the winter sale" },
            ScanList.OfTyped(string.Join(", ", there.Append(stranger))));
        register.SettleStock.Run(take, new StockSettlement { PutStrangersAway = true, LoseMissing = true });
    }
}
