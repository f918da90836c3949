namespace EditionRegister.EndToEnd.Tests.Rooms;

/// <summary>The whole job in a real terminal by keys alone, from the first run on nothing to a certificate, a check and a finding mended.</summary>
public sealed class WholeJobTests : IDisposable
{
    // Always as long, since screens show the folder and break lines by it.
    private readonly RealProgram _edreg = new("/tmp");

    public static bool HasTmux => Tools.Has("tmux");

    public void Dispose() => _edreg.Dispose();

    [Theory(Skip = "tmux is not here", SkipUnless = nameof(HasTmux))]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void From_a_pile_of_dry_sheets_to_a_certificate(int width, int height)
    {
        using TmuxScreen screen = new(_edreg.Folder, $"exec env LC_ALL=C.UTF-8 dotnet exec {RealProgram.Path}", width, height);
        Shown("1-welcome");

        // A register of one's own.
        screen.Sees("No register was found").Press("n").Sees("A new register").Press("Enter").Type("Studio Tolland").Press("F2");
        screen.Sees("The plan chest is empty").Sees("Studio Tolland");
        Shown("2-empty-plan-chest");

        // A work, the block it is printed from, a print run.
        screen.Press("2").Sees("Nothing lies on the bench yet").Press("n").Sees("Record a work");
        screen.Type("Harbour at Low Water").Press("Enter", "Enter").Type("Mira Tolland").Press("Enter", "Right", "Enter");
        screen.Type("2026").Press("Enter").Type("reduction linocut").Sees("Technique      reduction linocut").Sees("F4 as last time   Esc leave");
        Shown("3-record-a-work");
        screen.Press("F2").Sees("Work 1 recorded: “Harbour at Low Water”, Mira Tolland.");
        screen.Press("b").Sees("printed from").Press("Enter", "Enter").Type("linoleum").Press("Enter", "y", "F2").Sees("a reduction");
        screen.Press("n").Sees("A print run of").Press("Enter");
        screen.Type("18").Press("Enter").Type("0").Press("Enter").Type("3").Press("Enter", "Enter", "Enter").Type("kozo 42 gsm").Press("Enter").Type("2026-03-01").Press("Enter");
        screen.Type("310 x 220").Press("Enter").Type("400 x 300").Press("F2").Sees("15 in the pile");
        Shown("4-work");

        // The pulls are sorted with single keys; a slip is taken back.
        screen.Press("o").Sees("The pile, the first sheet at the left");
        screen.Press("k", "k", "k", "k", "k", "k", "k", "k", "k", "k", "k", "k", "k").Press("BSpace").Press("s").Press("x").Sees("Why is sheet 14 left out?").Press("m");
        screen.Press("s").Sees("All are sorted");
        Shown("5-sorted");

        // The declaration is rehearsed before it is written.
        screen.Press("Escape").Press("a").Sees("Declare an edition").Press("F2").Sees("Nothing is written yet");
        Shown("6-rehearsal");
        screen.Press("y").Sees("declared: 1/12 to 12/12");

        // Numbers, and the signing session.
        screen.Press("g").Sees("Numbers of").Press("F2").Sees("Next sheet is 1/12. Signed?");
        Shown("7-signing");
        screen.Press([.. Enumerable.Repeat("y", 12)]).Sees("all 12 signed");
        screen.Press("Escape");

        // The tray of numbers: some away, some in a drawer, one sold with its certificate and label.
        screen.Press("1").Sees("12").Press("Enter").Sees("numbered edition, 1/12 to 12/12");
        screen.Press("k").Sees("Mark sheets").Type("1-8").Press("F2").Sees("8 sheets marked").Press("m").Sees("Put away").Type("Studio > Plan chest > Drawer 3").Press("F2").Sees("Make").Press("y").Sees("8 sheets put away");
        screen.Press("z", "k").Sees("Mark sheets").Type("9-12").Press("F2").Sees("4 sheets marked").Press("c").Sees("Consign").Type("Quay Gallery").Press("Enter", "Right", "Right", "Enter").Type("2027-06-30").Press("Enter").Type("40");
        Shown("8-consigning");
        screen.Press("F2").Sees("4 sheets consigned to Quay Gallery");
        screen.Press("z").Press("Home").Press("s").Sees("Sell “Harbour at Low Water” 1/12").Type("Inés Vargøy").Press("Enter", "Right", "Enter").Type("210").Press("Enter");
        screen.Press("Enter", "Enter", "Enter", "y", "Enter", "y");
        Shown("9-selling");
        screen.Press("F2").Sees("1 sheet sold to Inés Vargøy for 210.00 EUR").Sees("1 certificate issued").Sees("1 label on 1 sheet");
        Shown("10-tray");
        Assert.Single(Directory.GetFiles(_edreg.In("register", "exports"), "certificate-*-C1.pdf"));
        Assert.Single(Directory.GetFiles(_edreg.In("register", "exports"), "labels-*.pdf"));

        // The pencil slipped on 2/12: the tray says so, the findings say why, and there it is mended.
        screen.Press("Right", "i").Sees("Inscribe “Harbour at Low Water” 2/12").Press("Right", "Enter", "C-u").Type("2/21").Press("F2").Sees("2/21 is pencilled on");
        screen.Press("4").Sees("1 contradiction, 0 queries");
        Shown("11-finding");
        screen.Press("Enter").Sees("Number given");
        Shown("12-impression");
        screen.Press("i").Sees("Inscribe").Press("Right", "Enter", "C-u").Type("2/12").Press("F2").Sees("1 sheet inscribed.");
        screen.Press("Escape").Sees("No contradictions, no queries");
        Shown("13-nothing-to-mend");

        // Labels of the whole edition, looked at before they are written; then the list of everything.
        screen.Press("5").Sees("First choose sheets").Press("s", "e").Sees("Pick an edition").Press("Enter").Sees("12 sheets").Press("k", "l").Sees("12 labels: 1 sheet of a4-3x8");
        Shown("14-documents");
        screen.Press("p").Sees("Sheet 1 of 1, position 1");
        Shown("15-labels-preview");
        screen.Press("w").Sees("12 labels on 1 sheet.");
        screen.Press("Escape").Sees("Written in this sitting").Press("k", "i").Sees("inventory as CSV, without owners").Press("w").Sees("inventory.csv");
        Assert.Equal(13, File.ReadAllLines(_edreg.In("register", "exports", "inventory.csv")).Length);

        // Who has what; and that the logbook is unbroken.
        screen.Press("7").Sees("Quay Gallery");
        Shown("16-address-book");
        screen.Press("3").Sees("Unbroken from 1 to");
        Shown("17-logbook");
        screen.Press("6").Sees("No show is recorded yet").Press("n").Sees("Make a show").Type("Open studio").Press("F2").Sees("Show 1 recorded");
        Shown("18-shows");
        Leave(screen);
        Assert.Contains("0 contradictions", _edreg.Do("check", "--register", "register"), StringComparison.Ordinal);

        void Shown(string name)
        {
            if (name == "1-welcome")
            {
                screen.Sees("No register was found");
            }

            ApprovedScreen.Matches(FormattableString.Invariant($"{width}x{height}/{name}"), screen.Text, _edreg.Folder);
        }
    }

    private static void Leave(TmuxScreen screen) => screen.Press("q").Sees("Leave the register?").Press("y");
}
