using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;
using EditionRegister.UseCases.Tests.Refusals;

namespace EditionRegister.UseCases.Tests.Sets;

/// <summary>A print exchange: three take part, each prints three, and each gets a copy with one print of everyone.</summary>
public sealed class ExchangeTests : IDisposable
{
    private static readonly string[] Everyone = ["Mira Tolland", "Ada Brook", "Adam Fenwright"];

    private readonly TempFolder _folder = new();
    private readonly Register _register;

    public ExchangeTests()
    {
        _register = new MakeRegister(Studio.Surroundings("exchange")).Run(new RegisterFolder(_folder.In("register")), new RegisterSettings { Name = "Studio" });

        foreach (var name in Everyone)
        {
            _register.RecordPerson.Run(new NewPerson { Name = name });
        }

        for (var at = 0; at < 3; at++)
        {
            Printed($"Print {at + 1}", Everyone[at]);
        }

        Printed("Exchange", Everyone[0]);
        _register.MakeSet.Run(4, "exchange", "sheets");
        _register.ChangeSetParts.Add(4, [1, 2, 3]);
        _register.GatherSet.ByNumber(4, copies: null);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Gathered_and_each_still_its_maker_s_it_raises_no_alarm() => Assert.Empty(_register.CheckRegister.Run());

    [Fact]
    public void Handed_over_every_copy_is_whole_and_belongs_to_who_took_part()
    {
        // Copy 1 stays Mira's own; what Ada printed in copy 2 is hers already, and the rest passes to her with the copy.
        for (var copy = 2; copy <= 3; copy++)
        {
            _register.SellImpressions.Run(Numbers(copy), new(Everyone[copy - 1]), new Sale { Collected = true, Note = "exchanged" });
        }

        var sheets = _register.LookAround.Works().Where(work => work.Id <= 3).SelectMany(work => work.Impressions).ToList();
        Assert.Equal(3, sheets.Count(sheet => sheet.Number == 2 && sheet.Whose == Owner.Known(2) && sheet.Where == Position.With(2)));
        Assert.Equal(3, sheets.Count(sheet => sheet.Number == 3 && sheet.Whose == Owner.Known(3) && sheet.Where == Position.With(3)));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_set_may_lie_in_a_set_and_goes_along_with_all_that_is_in_it()
    {
        Printed("Box", Everyone[0]);
        _register.MakeSet.Run(5, "portfolio");
        _register.ChangeSetParts.Add(5, [4]);
        _register.GatherSet.ByNumber(5, copies: null);
        _register.RecordPlace.Run("Studio › Shelf");

        _register.PutAway.Run(new ImpressionChoice { Edition = 5, Sheets = "1" }, "Shelf");

        var placed = _register.LookAround.Works().SelectMany(work => work.Impressions).Where(sheet => sheet.Where!.State == "placed").ToList();
        // The box, the exchange in it, and three prints in that.
        Assert.Equal(5, placed.Count);
        Assert.All(placed, sheet => Assert.Equal(1, sheet.Number));
        Assert.Equal("part-holds-the-set", Assert.Throws<RefusedException>(() => _register.ChangeSetParts.Add(4, [5])).Name);
    }

    private static ImpressionChoice Numbers(int number) => new() { Edition = 4, Sheets = FormattableString.Invariant($"{number}") };

    private void Printed(string title, string maker)
    {
        var work = _register.RecordWork.Run(new NewWork { Title = title }, [maker]);
        _register.RecordPrintRun.Run(work, new NewPrintRun { Started = 3 });
        _register.SortPulls.Run(new ImpressionChoice { Work = work, Pile = "1-3" }, "kept");
        _register.GiveNumbers.AsPiled(_register.DeclareEdition.Run(work, new NewEdition { Numberings = [NumberingPlan.Read("1-3")] }), null, null);
    }
}
