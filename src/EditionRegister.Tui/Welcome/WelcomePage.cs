using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Registers;

namespace EditionRegister.Tui.Welcome;

/// <summary>What is met where no register was found: make one, look at the demo, or open one that lies elsewhere.</summary>
internal sealed class WelcomePage(Desk desk, TextUiServices services) : TextPage
{
    private const string Folder = "Folder";
    private const string Called = "What it is called";
    private const string Money = "Currency of your prices";
    private const string Measures = "Sizes on documents in";
    private const string Link = "Address for QR links";

    public override string Title => "Welcome";

    public override string Explains =>
        "A register is one folder of files on this machine: nothing goes over a network, and nothing is written anywhere else. "
        + "Make a register of your own in a new folder, or look around in the demo first: it is invented, and can be made anew at any time.";

    public override IReadOnlyList<KeyDeed> Keys =>
    [
        KeyDeed.Opens("n", "make a new register", NewRegister),
        new("d", "look at the demo", DemoAsync),
        KeyDeed.Opens("o", "open one that lies elsewhere", Elsewhere),
    ];

    public override IReadOnlyList<Line> Text(int width) =>
    [
        Line.Empty,
        .. Wrap.Of("Here a printmaker keeps what is known of every hand-printed sheet: what it is, its number, where it is and whose it is; and prints certificates, labels and lists from that.", width).Select(line => (Line)line),
        Line.Empty,
        .. Wrap.Of("No register was found in this folder or in one above it.", width).Select(line => (Line)line),
        Line.Empty,
        Line.Of("  n  ", Tone.Key).Then("make a new register: a folder of its own, on this machine"),
        Line.Of("  d  ", Tone.Key).Then("look at the demo: an invented studio with a few editions"),
        Line.Of("  o  ", Tone.Key).Then("open a register that lies elsewhere"),
        Line.Empty,
        Line.Of("  ?  ", Tone.Key).Then("explains the page you are on, here and in every room"),
        Line.Of("  q  ", Tone.Key).Then("leaves"),
    ];

    private Form NewRegister() => new("A new register", [
        new Field(Folder, "register") { IsNeeded = true, Form = "a new folder, such as register or /home/me/prints" },
        new Field(Called) { Form = "shown at the top of the screen and on lists: Studio Tolland" },
        new Field(Money, "EUR") { IsNeeded = true, Form = "three letters, such as EUR, GBP or USD", Wrong = WrongCurrency },
        Field.OneOf(Measures, ["mm", "in"]),
        new Field(Link) { Form = "https://example.org/prints, or empty to print no QR codes", Wrong = WrongAddress },
    ], MakeAsync);

    private Form Elsewhere() => new("Open a register", [
        new Field(Folder) { IsNeeded = true, Form = "the folder that holds register.db", Wrong = NoRegister },
    ], form => Task.FromResult(new Saved("", new Leave(PathOf(form[Folder]!)))));

    private async Task<Saved> MakeAsync(Form form)
    {
        var path = PathOf(form[Folder]!);
        RegisterSettings settings = new()
        {
            Name = form[Called] ?? Path.GetFileName(path),
            Currency = form[Money]!.ToUpperInvariant(),
            Units = form[Measures]!,
            BaseUrl = form[Link]?.TrimEnd('/'),
        };

        try
        {
            await Task.Run(() => new MakeRegister(services.Surroundings).Run(new RegisterFolder(path), settings));
        }
        catch (Exception failure) when (failure is UnauthorizedAccessException or IOException)
        {
            throw new RefusedException("register-not-made", $"No register was made: {path} cannot be written ({failure.Message.TrimEnd('.')}). Name a folder of your own.");
        }

        return new Saved("", new Leave(path));
    }

    private async Task<Opening?> DemoAsync()
    {
        desk.Progress("Making the demo…");
        var folder = Path.Combine(services.CurrentDirectory, "exports", "demo", "register");
        await Task.Run(() => new MakeDemo(_ => { }).Run(new RegisterFolder(folder)));

        return new Leave(folder);
    }

    private string PathOf(string typed) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(typed, services.CurrentDirectory));

    private string? NoRegister(string typed) =>
        new RegisterFolder(PathOf(typed)).HoldsRegister ? null : $"{PathOf(typed)} holds no register.db, so no register lies there.";

    private static string? WrongCurrency(string typed) =>
        typed.Length == 3 && typed.All(char.IsAsciiLetter) ? null : "A currency is three letters, such as EUR, GBP or USD.";

    private static string? WrongAddress(string typed) =>
        Uri.TryCreate(typed, UriKind.Absolute, out var address) && address.Scheme is "http" or "https" && !typed.Contains('?', StringComparison.Ordinal) && !typed.Contains('#', StringComparison.Ordinal)
            ? null
            : "A whole address is needed, such as https://example.org/prints, without ? and #.";
}
