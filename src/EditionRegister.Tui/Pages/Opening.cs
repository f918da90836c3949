namespace EditionRegister.Tui.Pages;

/// <summary>What comes of pressing a key: a page that opens, something asked, a way to another room; null where all stays.</summary>
internal abstract class Opening;

/// <summary>The page is done with: the one below it stands again.</summary>
internal sealed class Back(Opening? then = null) : Opening
{
    public static Back Once { get; } = new();

    /// <summary>What opens over the page below: the form that led here, with all that was typed.</summary>
    public Opening? Then { get; } = then;
}

/// <summary>Another room is entered, with a page opened in it where one is named.</summary>
internal sealed class GoTo(RoomName room, Page? page = null) : Opening
{
    public RoomName Room { get; } = room;

    public Page? Page { get; } = page;
}

/// <summary>The program ends, or another register is opened in its place.</summary>
internal sealed class Leave(string? open = null) : Opening
{
    /// <summary>The folder of the register to open next, or null to end.</summary>
    public string? Open { get; } = open;
}
