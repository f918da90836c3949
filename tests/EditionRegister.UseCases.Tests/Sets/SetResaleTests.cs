using EditionRegister.Domain.Chains;
using EditionRegister.UseCases.Tests.Refusals;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Sets;

/// <summary>A copy sold on by its owner takes along what came to them with it.</summary>
public sealed class SetResaleTests : IDisposable
{
    private readonly Studio _studio = new();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void What_lies_in_a_copy_passes_on_from_owner_to_owner()
    {
        _studio.Register.MakeSet.Run(4, "portfolio", "colophon");
        _studio.Register.ChangeSetParts.Add(4, [1]);
        _studio.Register.GatherSet.ByNumber(4, copies: null);

        _studio.Register.SellImpressions.Run(Numbers(2, "1"), new("Ada Brook", Seller: "Mira Tolland"), new Sale { Price = 40_000, Currency = "EUR" });
        _studio.Register.SellImpressions.Run(Numbers(2, "1"), new("Adam Fenwright", Seller: "Ada Brook"), new Sale { Price = 60_000, Currency = "EUR" });

        Assert.Equal([1L, 3L, 4L], _studio.Register.LookAround.Work(1).Impressions[0].Ownership.Select(link => link.To.Person!.Value));
    }
}
