using EditionRegister.Domain;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.UseCases.Tests.ReadingIn;

/// <summary>Old editions known in part, and single prints of somebody else's: no findings about what is not ours to know.</summary>
public sealed class OldEditionsTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public OldEditionsTests()
    {
        _register = _temp.Register;
        _register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });
        _register.RecordPerson.Run(new NewPerson { Name = "Quay Gallery", IsOrganisation = true });
        _register.RecordPlace.Run("Studio › Drawer 3");
        _register.RecordWork.Run(new NewWork { Title = "Old Pier" }, ["Mira Tolland"]);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Fourteen_sold_long_ago_and_sixteen_in_a_drawer()
    {
        _register.KnownNumbers.Sold(1, KnownPart.Read("1-14") with { Size = 30 });
        var codes = _register.KnownNumbers.Here(1, KnownPart.Read("15-30"), new SentTo(null, "Drawer 3"), new KnownSheets { Signed = "yes" });

        var work = _register.LookAround.Work(1);
        var edition = work.Editions.Single();
        Assert.Equal((16, "partly-known", 30), (codes.Count, edition.Extent, edition.Size));
        Assert.Equal(14, edition.Numberings[0].Numbers.Count(slot => slot.Fate == "elsewhere"));
        Assert.All(work.Impressions, sheet => Assert.Equal((Position.InPlace(2), Owner.Known(1), "as-listed"), (sheet.Where, sheet.Whose, sheet.Whereabouts[0].Kind)));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Proofs_and_sheets_with_a_gallery_come_after_and_the_edition_can_be_made_whole()
    {
        _register.KnownNumbers.Here(1, KnownPart.Read("1-3") with { Size = 5 }, new SentTo("Quay Gallery"), new KnownSheets());
        _register.KnownNumbers.Here(1, KnownPart.Read("A/P I-II") with { Size = 2 }, new SentTo(null), new KnownSheets());
        _register.KnownNumbers.Sold(1, KnownPart.Read("4-5"));

        _register.MakeEditionWhole.Run(1);

        Assert.Equal(["numbered", "artists-proof"], _register.LookAround.Work(1).Editions.Single().Numberings.Select(numbering => numbering.KindWord));
        Assert.True(_register.LookAround.Work(1).Editions.Single().IsWhole);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_print_of_somebody_elses_is_here_in_one_go_and_is_undone_in_one_go()
    {
        var code = _register.HoldSheet.Run(new HeldSheet { Title = "Weir", Maker = "Ada Brandt", Number = "14/75", Total = 83, Place = "Drawer 3" });

        var (work, sheet) = (_register.LookAround.Impression(code).Work, _register.LookAround.Impression(code).Impression);
        Assert.Equal(("someone-elses", 75, 83), (work.Editions[0].Extent, work.Editions[0].Size, work.Editions[0].StatedTotal));
        Assert.Equal((14, "14/75", Position.InPlace(2), Owner.Unknown), (sheet.Number, sheet.Pencilled, sheet.Where, sheet.Whose));
        Assert.Equal("Ada Brandt", work.ShownMaker);
        Assert.Empty(_register.CheckRegister.Run());

        // The two places of the drawer's path were the first batch.
        _register.UndoBatch.Run(2);

        Assert.Single(_register.LookAround.Works());
        Assert.DoesNotContain(_register.LookAround.Book().People.Values, person => person.Name == "Ada Brandt");
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Another_of_the_same_edition_joins_it_and_the_same_number_is_refused()
    {
        _register.HoldSheet.Run(new HeldSheet { Title = "Weir", Maker = "Ada Brandt", Number = "14/75" });
        _register.HoldSheet.Run(new HeldSheet { Title = "Weir", Maker = "ada brandt", Number = "15/75", Total = 83 });

        var refused = Assert.Throws<RefusedException>(() => _register.HoldSheet.Run(new HeldSheet { Title = "Weir", Maker = "Ada Brandt", Number = "15/75" }));

        var work = _register.LookAround.Works().Single(one => one.Title == "Weir");
        Assert.Equal("number-given-already", refused.Name);
        Assert.Equal((1, 2, 83), (work.Editions.Count, work.Impressions.Count, work.Editions[0].StatedTotal));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void It_is_neither_closed_nor_certified_by_us()
    {
        var code = _register.HoldSheet.Run(new HeldSheet { Title = "Weir", Maker = "Ada Brandt", Number = "14/75", Signed = "yes" });

        var closed = Assert.Throws<RefusedException>(() => _register.CloseEdition.Run(1));
        var certified = Assert.Throws<RefusedException>(() => _register.IssueCertificates.Run(ImpressionChoice.OfCode(code)));

        Assert.Equal("edition-not-ours-whole", closed.Name);
        Assert.Contains("Nothing was", closed.Message, StringComparison.Ordinal);
        Assert.Contains("14/75", certified.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_print_nothing_need_be_known()
    {
        var code = _register.HoldSheet.Run(new HeldSheet());

        Assert.Equal(Position.Unknown, _register.LookAround.Impression(code).Impression.Where);
        Assert.Empty(_register.CheckRegister.Run());
    }
}
