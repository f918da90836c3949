using EditionRegister.Domain.Sizes;

namespace EditionRegister.Tui.Tests.Bench;

/// <summary>The declaration is seen whole before any of it is written.</summary>
public sealed class DeclarationTests
{
    [Fact]
    public async Task The_rehearsal_shows_every_pencil_line_and_writes_nothing()
    {
        await using var house = await FormAsync();
        var head = house.Register.LookAround.Head();

        await house.FillAsync(("Numberings", "1-4, A/P I-II, H.C. A-B"), ("Declared on", "2026-03-01"));

        BenchScreens.Are(house, "rehearsal");
        Assert.Equal(head, house.Register.LookAround.Head());
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task What_is_shown_is_what_is_then_declared_numbered_and_certified()
    {
        await using var house = await FormAsync();
        await house.FillAsync(("Numberings", "1-4, A/P I-II"));
        var shown = house.Screen(120, 60);

        await house.PressAsync("y", "g");
        await house.FillAsync();

        var work = house.Register.LookAround.Work(1);
        var facts = EditionRegister.Domain.Documents.CertificateFacts.Of(work, work.Impressions[0], SizeStyle.Millimetres);
        Assert.All(new[] { "edition", "proofs", "total" }, key => Assert.Contains(facts.First(fact => fact.Key == key).Value, shown, StringComparison.Ordinal));
        Assert.All(house.Register.SpellPencil.Run(OnTheBench.Pile("1-5, 8")), line => Assert.Contains($"\n{line.Text.Number} ", shown, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Esc_leads_back_to_the_form_with_all_that_was_typed()
    {
        await using var house = await FormAsync();
        await house.FillAsync(("Numberings", "1-4, A/P I-I"), ("Intended", "6"), ("Note", "for the spring fair"));

        await house.PressAsync("Esc");

        Assert.Equal("1-4, A/P I-I", house.Form["Numberings"]);
        Assert.Equal("6", house.Form["Intended"]);
        Assert.Equal("for the spring fair", house.Form["Note"]);
        Assert.Equal("“Harbour”", house.House.Page.Title);
    }

    [Fact]
    public async Task A_reduction_never_declares_more_than_lie_there()
    {
        await using var house = await OnTheBench.WithPullsAsync();
        house.Register.RecordMatrix.Run(1, "block", "linoleum", "yes", EditionRegister.Domain.Dates.RecordedDate.None);
        house.Register.SortPulls.Run(OnTheBench.Pile("1-5"), "kept");
        house.Register.SortPulls.Run(OnTheBench.Pile("6-7"), "spare");
        await house.PressAsync("2", "Enter", "a");

        await house.FillAsync(("Numberings", "1-12"));

        Assert.Equal("“Harbour” is a reduction print: no more than the 7 sheets at hand can ever be numbered. Nothing was changed. Choose a size up to 7.", house.Form.Problem);
    }

    [Fact]
    public async Task Numbers_without_a_sheet_are_told_before_they_are_declared()
    {
        await using var house = await FormAsync();

        await house.FillAsync(("Numberings", "7"));

        Assert.Contains("2 numbers of 1/7 to 7/7: they stay open until they are", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Proofs_alone_are_pointed_at_before_they_are_declared()
    {
        await using var house = await FormAsync();

        await house.FillAsync(("Numberings", ", A/P I-II"));

        Assert.Contains("Proofs only           the edition itself, such as 1-12, is not among them", house.Screen(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("harbour", "“harbour” is no numbering. Nothing was changed. Write its first and last number, with the mark before them: 1-12, A/P I-II, H.C. A-C, B.A.T., or open.")]
    [InlineData("3-12", "Every numbering begins at one, and “3-12” does not. Nothing was changed. Write it from one to its size, as in 1-12.")]
    [InlineData("", "Numberings is needed: such as 1-12, deluxe: I-X, A/P I-II, B.A.T. – or 12 – or open – or edition of 75 plus 10 artist's proofs.")]
    public async Task What_is_no_numbering_is_said_in_the_form(string typed, string said)
    {
        await using var house = await FormAsync();

        await house.FillAsync(("Numberings", typed));

        Assert.Equal(said, house.Form.Problem);
    }

    [Fact]
    public async Task An_edition_another_window_declared_meanwhile_is_refused_on_the_rehearsal()
    {
        await using var house = await FormAsync();
        await house.FillAsync(("Numberings", "1-4"));
        house.Register.DeclareEdition.Run(1, new() { Numberings = [EditionRegister.Domain.Editions.NumberingPlan.Read("1-5")] });

        await house.PressAsync("y");

        Assert.Equal("“Harbour” has an edition already. Nothing was changed. A second edition must be disclosed as one: say so with --rank later, or with --rank restrike or posthumous where it is one.", house.Message);
    }

    private static async Task<TestHouse> FormAsync()
    {
        var house = await OnTheBench.WithKeptAsync();
        await house.PressAsync("2", "Enter", "a");

        return house;
    }
}
