using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Welcome;

/// <summary>What is met where no register was found: make one, look at the demo, or open one that lies elsewhere.</summary>
internal sealed class WelcomePage(Desk desk, TextUiServices services) : TextPage
{
    public override string Title => "Welcome";

    public override string Explains =>
        "A register is one folder of files on this machine: nothing goes over a network, and nothing is written anywhere else. "
        + "Make a register of your own in a new folder, or look around in the demo first: it is invented, and can be made anew at any time. "
        + "A register that is there already is found when the program is started in its folder or in one inside it; else open it here.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("n", "make a register", () => NewRegisterForm.Of(services)) with { Explained = "Makes an empty register of your own in a folder of its own, and opens it." },
        new("d", "look at the demo", () => new DemoDoor(desk, services).OpenAsync()) { Explained = "Makes an invented studio with a few editions, to try everything in. Nothing you do there touches a register of your own." },
        KeyDeed.Opens("o", "open a register", () => ElsewhereForm.Of(services)) with { Explained = "Opens a register that lies in another folder." },
    ];

    public override IReadOnlyList<Line> Text(int width) =>
    [
        Line.Empty,
        .. Sentence("Here a printmaker keeps what is known of every hand-printed sheet: what it is, its number, where it is and whose it is; and prints certificates, labels and lists from that.", width),
        Line.Empty,
        .. Sentence($"No register was found in {services.CurrentDirectory} or in a folder above it.", width),
        Line.Empty,
        Line.Of("  n  ", Tone.Key).Then("make a register of your own: a folder on this machine"),
        Line.Of("  d  ", Tone.Key).Then("look at the demo: an invented studio with a few editions"),
        Line.Of("  o  ", Tone.Key).Then("open a register that lies elsewhere"),
        Line.Empty,
        Line.Of("  ?  ", Tone.Key).Then("explains the page you are on, here and in every room"),
        Line.Of("  q  ", Tone.Key).Then("leaves"),
    ];

    private static IEnumerable<Line> Sentence(string text, int width) => Wrap.Of(text, width).Select(line => (Line)line);
}
