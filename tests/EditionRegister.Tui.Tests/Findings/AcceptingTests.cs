using EditionRegister.Tui.Tests.Logbook;

namespace EditionRegister.Tui.Tests.Findings;

/// <summary>Findings accepted with a reason.</summary>
public sealed class AcceptingTests
{
    private const string Reason = "the buyers know both spellings";

    [Fact]
    public async Task What_is_accepted_leaves_the_list_and_stands_apart_with_its_reason()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        var counts = house.Screen().Split('\n')[0];

        await house.PressAsync("a");
        await house.FillAsync(("Reason", Reason));
        Assert.Equal("Accepted: CertificatesAgree, “Harbor” 1/12 (MEKA-X5ED). It returns when its facts change.", house.Message);
        var open = house.Screen().Split('\n')[0];
        await house.PressAsync("v");

        Assert.StartsWith("2 contradictions, 0 queries, 18 notes", counts, StringComparison.Ordinal);
        Assert.StartsWith("1 contradiction, 0 queries, 18 notes: checked 222 entries", open, StringComparison.Ordinal);
        ApprovedPage.Is(house.Screen(), "Findings", "accepted-80");
    }

    [Fact]
    public async Task What_the_room_keeps_of_an_acceptance_is_what_a_check_finds()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("a");
        await house.FillAsync(("Reason", Reason));
        await house.PressAsync("v");
        var kept = house.Screen(120, 35);

        await house.PressAsync("c");
        await house.CheckedAsync();

        Assert.Equal(house.Screen(120, 35), kept);
    }

    [Fact]
    public async Task A_reason_is_needed()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();

        await house.PressAsync("a");
        await house.FillAsync(("Reason", "  "));

        Assert.Equal("Reason is needed: why it may stand: counted again, the printer's list was wrong.", house.Form.Problem);
        Assert.Equal(221, house.Register.LookAround.Head().N);
    }

    [Fact]
    public async Task It_returns_when_its_facts_change()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("a");
        await house.FillAsync(("Reason", Reason));
        house.Register.EditWork.Run(1, "Harboor", null, null);

        await house.ReturnAsync();

        Assert.StartsWith("2 contradictions, ", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("v", house.Keys);
    }

    [Fact]
    public async Task U_takes_the_acceptance_back_at_once()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("a");
        await house.FillAsync(("Reason", Reason));

        await house.PressAsync("u");

        Assert.Equal("No longer accepted: CertificatesAgree, “Harbor” 1/12 (MEKA-X5ED).", house.Message);
        Assert.StartsWith("2 contradictions, 0 queries, 18 notes: checked 223 entries", house.Screen(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task T_takes_an_acceptance_back_later()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("a");
        await house.FillAsync(("Reason", Reason));
        await house.ReturnAsync();

        await house.PressAsync("v", "t");
        Assert.Equal("Take the acceptance back? What was found of “Harbor” 1/12 (MEKA-X5ED) counts again.", house.Question.Asked);
        await house.PressAsync("y");

        Assert.Equal("No longer accepted: CertificatesAgree, “Harbor” 1/12 (MEKA-X5ED).", house.Message);
        Assert.Contains("No finding is accepted.", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain(house.Register.CheckRegister.Run(), finding => finding.Accepted is not null);
    }

    [Fact]
    public async Task What_changed_in_another_window_meanwhile_is_refused_and_the_reason_stays()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        await house.PressAsync("a");
        house.Register.EditWork.Run(1, "Harboor", null, null);

        await house.FillAsync(("Reason", Reason));

        Assert.Matches("^No finding is called [0-9A-Z]+ now; its facts may have changed. Nothing was changed.", house.Form.Problem);
        Assert.Equal(Reason, house.Form["Reason"]);
    }

    [Fact]
    public async Task Who_accepted_it_is_named()
    {
        await using var house = await InFindings.OnRetitledAsync();
        await house.EnterFindingsAsync();
        var handle = house.Register.CheckRegister.Run().First(finding => finding.Handle is not null).Handle!;
        house.As(2).AcceptFinding.Run(handle, Reason);

        await house.ReturnAsync();
        await house.PressAsync("v");

        Assert.Contains($", {house.Register.LookAround.Book().NameOf(2)}: {Reason}", house.Screen(), StringComparison.Ordinal);
    }
}
