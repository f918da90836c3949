namespace EditionRegister.Tui.Pages;

/// <summary>How a stretch of text is meant. Never the only sign of anything: the words say it too.</summary>
internal enum Tone
{
    Plain,
    Quiet,
    Strong,
    Key,
    Good,
    Warning,
    Bad,

    /// <summary>Where the cursor stands.</summary>
    Here,
}
