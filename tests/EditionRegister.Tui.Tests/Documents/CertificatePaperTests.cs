using EditionRegister.Domain;
using EditionRegister.Tui.Tests.PlanChest;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Tests.Documents;

/// <summary>Certificates: looked at, asked about, issued, written, printed again.</summary>
public sealed class CertificatePaperTests
{
    [Theory]
    [InlineData(80, 19)]
    [InlineData(120, 35)]
    public async Task One_is_read_before_it_is_issued(int width, int height)
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4-5");
        var before = house.Register.LookAround.Head();

        await house.PressAsync("p");

        ApprovedScreen.Is(house.Shown(width, height), $"certificate-{width}", "Documents");
        Assert.Equal(before, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task What_was_read_is_what_is_issued()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4");
        await house.PressAsync("p");
        var read = house.Screen(200, 60);

        await house.PressAsync("w", "y");

        var statement = house.Statement(PapersHouse.Harbour, "4");
        var labels = statement.Lines.Max(line => line.Label.Length) + 2;
        Assert.All(statement.Lines, line => Assert.Contains($"\n{line.Label.PadRight(labels)}{line.Value}", read, StringComparison.Ordinal));
        Assert.Contains(statement.Caution, read.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains(statement.Link!, read, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_asked_before_anything_is_issued_and_no_issues_nothing()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4-5");
        var before = house.Register.LookAround.Head();

        await house.PressAsync("w");

        Assert.Equal(
            "Issue 2 certificates? Each freezes what the register says today; it can be superseded later, and never taken back. Local law decides what a certificate for a print must disclose; read it before you sign.",
            house.Question.Asked);
        await house.PressAsync("n");
        Assert.Equal(before, house.Register.LookAround.Head());
        Assert.Empty(Directory.Exists(house.Register.Folder.Exports) ? Directory.GetFiles(house.Register.Folder.Exports) : []);
    }

    [Fact]
    public async Task Issued_and_written_it_is_said_as_the_command_says_it_with_the_files_in_full()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4-5");

        await house.PressAsync("w", "y");

        var serials = new[] { "4", "5" }.Select(number => house.Statement(PapersHouse.Harbour, number).Serial).ToList();
        Assert.Equal($"2 certificates issued: {serials[0]}, {serials[1]}.", house.Message);
        Assert.Equal(
            $"""
            {house.Message}

            The files:
            /register/exports/certificate-{serials[0]}.pdf
            /register/exports/certificate-{serials[1]}.pdf

            Local law decides what a certificate for a print must disclose; read it before
            you sign.
            """,
            house.Shown());
        Assert.All(serials, serial => Assert.True(File.Exists(house.Exported($"certificate-{serial}.pdf"))));
    }

    [Fact]
    public async Task While_it_is_written_it_says_how_far_it_has_come()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4-5");
        List<string> said = [];
        house.House.Desk.Redraw = () => said.Add(house.Message);

        await house.PressAsync("w", "y");

        Assert.Equal(["Issuing 2 certificates…", "Writing certificate 1 of 2…", "Writing certificate 2 of 2…"], said.Where(one => one.EndsWith('…')));
    }

    [Fact]
    public async Task Printing_again_issues_nothing_and_gives_the_same_bytes()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4");
        await house.PressAsync("w", "y", "Esc");
        var file = house.Exported($"certificate-{house.Statement(PapersHouse.Harbour, "4").Serial}.pdf");
        var (issued, before) = (await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken), house.Register.LookAround.Head());
        File.Delete(file);

        await house.MakeAsync("r");
        await house.PressAsync("w");

        Assert.Equal("1 certificate written.", house.Message);
        Assert.Equal(issued, await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
        Assert.Equal(before, house.Register.LookAround.Head());
    }

    [Fact]
    public async Task One_that_stands_is_refused_in_the_words_of_the_command_and_then_none_is_issued()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "2-3");
        var refusal = Assert.Throws<RefusedException>(() => house.Register.IssueCertificates.Run(new ImpressionChoice { Edition = PapersHouse.Harbour, Sheets = "2-3" })).Message;
        await house.PressAsync("p");
        var read = house.Screen(300, 19);

        await house.PressAsync("w", "y");

        Assert.Contains("1 of 2 certificates cannot be issued, and then none is. o leaves it out.", read, StringComparison.Ordinal);
        Assert.Contains(refusal, read, StringComparison.Ordinal);
        Assert.Equal(refusal, house.Message);
        Assert.Null(house.Sheet(PapersHouse.Harbour, "2").ValidCertificate);
    }

    [Fact]
    public async Task What_cannot_be_issued_is_left_out_and_the_rest_is_issued()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "1-4");
        await house.PressAsync("p");

        await house.PressAsync("o");
        var read = house.Screen();
        await house.PressAsync("w", "y");

        Assert.StartsWith("certificates: issue and write; 2 sheets of “Harbour at Low Water” 1-4\nAs they will be issued: nothing is issued yet.\n1 of 2: ", read, StringComparison.Ordinal);
        Assert.Equal($"2 certificates issued: {house.Statement(PapersHouse.Harbour, "2").Serial}, {house.Statement(PapersHouse.Harbour, "4").Serial}.", house.Message);
        Assert.Single(house.Sheet(PapersHouse.Harbour, "1").Documents);
    }

    [Fact]
    public async Task Where_none_can_be_issued_nothing_is_left_to_leave_out()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "1, 3");

        await house.PressAsync("p");

        Assert.Contains("2 of 2 certificates cannot be issued, and then none is.\n", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain(house.House.Page.Keys, key => key.Key == "o");
    }

    [Fact]
    public async Task One_takes_the_place_of_one_that_stands()
    {
        await using var house = await TestHouse.OnDemoAsync();
        var first = house.Statement(PapersHouse.Harbour, "3").Serial;
        await house.PickAsync("harbour", "3");
        await house.MakeAsync("s");

        await house.PressAsync("p", "w", "y");

        Assert.Equal(first, house.Statement(PapersHouse.Harbour, "3").Supersedes);
        Assert.Equal($"1 certificate issued: {first[..^1]}2.", house.Message);
    }

    [Fact]
    public async Task One_that_another_window_issued_meanwhile_is_met_when_it_is_issued()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4");
        await house.PressAsync("w");
        var serial = house.Register.IssueCertificates.Run(new ImpressionChoice { Edition = PapersHouse.Harbour, Sheets = "4" }).Single();

        await house.PressAsync("y");

        Assert.Equal(
            $"No certificate was issued: {serial} already stands for 4/12 of “Harbour at Low Water” ({serial[..^3]}). Let a new one take its place with --supersede, or leave it.",
            house.Message);
        Assert.Single(house.Sheet(PapersHouse.Harbour, "4").Documents);
    }

    [Fact]
    public async Task Issued_but_not_written_says_both_and_can_be_printed_again()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "4");

        // A file lies where the folder would be.
        var folder = Path.Combine(house.Register.Folder.FullPath, "register.toml");
        await house.PressAsync("o");
        await house.FillAsync(("Folder", folder));
        await house.PressAsync("w", "y");
        var said = house.Message;
        await house.PressAsync("o");
        await house.FillAsync(("Folder", ""));
        await house.MakeAsync("r");
        await house.PressAsync("w");

        var serial = house.Statement(PapersHouse.Harbour, "4").Serial;
        Assert.StartsWith($"1 certificate issued: {serial}. {Path.Combine(folder, $"certificate-{serial}.pdf")} could not be written:", said, StringComparison.Ordinal);
        Assert.EndsWith("What is issued can be printed again then: “certificates: print again those that stand”.", said, StringComparison.Ordinal);
        Assert.Equal("1 certificate written.", house.Message);
    }

    [Fact]
    public async Task Where_none_stands_nothing_is_printed_again()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("harbour", "3-4");
        await house.MakeAsync("r");

        await house.PressAsync("w");

        Assert.Equal($"No certificate stands for {house.Sheet(PapersHouse.Harbour, "4").ShownCode}. Nothing was written. Issue one with `edreg certificate issue`.", house.Message);
        Assert.Empty(house.House.Desk.Written.Latest);
    }

    [Fact]
    public async Task A_pupil_stands_on_it_as_the_policy_says()
    {
        await using var house = await TestHouse.OnDemoAsync();
        await house.PickAsync("heron", "1");

        await house.PressAsync("p");

        Assert.Contains("Artist                8B-11\n", house.Screen(), StringComparison.Ordinal);
        Assert.DoesNotContain("Birdseye", house.Screen(120, 60), StringComparison.Ordinal);
    }
}
