using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Integrity;

public class ReservedSheetsAreStillToBeHadTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void Sold_while_it_is_kept_for_someone()
    {
        Assert.Equal(
            [$"Query: 3/12 of “Harbour” ({Clean.The("3/12").ShownCode}) is reserved for Ivo Brandt, and it belongs to Ivo Brandt."],
            Findings("3/12", Kept(Harbour.Buyer, "standing")));
    }

    [Fact]
    public void Gone_while_it_is_kept_for_somebody_not_named()
    {
        Assert.Equal(
            [$"Query: 4/12 of “Harbour” ({Clean.The("4/12").ShownCode}) is reserved for somebody not named, and it is gone for good."],
            Findings("4/12", sheet => Kept(null, "standing")(sheet) with
            {
                Whereabouts = [.. sheet.Whereabouts, new(900, 1, 2, "destroyed", sheet.Where, Position.Gone, Harbour.On("2026-05-01"), RecordedDate.None, null, null)],
            }));
    }

    [Theory]
    [InlineData("3/12", "lifted")]
    [InlineData("3/12", "fulfilled")]
    [InlineData("4/12", "standing")]
    [InlineData("5/12", "standing")]
    public void Lifted_fulfilled_and_still_to_be_had_here_or_at_the_gallery_are_good_practice(string number, string standing) =>
        Assert.Empty(Findings(number, Kept(Harbour.Buyer, standing)));

    private static Func<Impression, Impression> Kept(long? person, string standing) =>
        sheet => sheet with { Reservations = [new(1, 1, person, Harbour.On("2026-03-20"), RecordedDate.None, standing, null)] };

    private static IReadOnlyList<string> Findings(string number, Func<Impression, Impression> change) =>
        FindingsOf.Rule("ReservedSheetsAreStillToBeHad", Clean.WithSheet(number, change));
}
