using EditionRegister.Tui.Asking;

namespace EditionRegister.Tui.Tests.Welcome;

/// <summary>Paths as people type them.</summary>
public sealed class TypedPathTests
{
    private static readonly string Home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);

    [Theory]
    [InlineData("prints", "/studio/prints")]
    [InlineData("../prints/", "/prints")]
    [InlineData("/srv/prints", "/srv/prints")]
    [InlineData(" 'my prints' ", "/studio/my prints")]
    [InlineData("\"my prints\"", "/studio/my prints")]
    [InlineData("~prints", "/studio/~prints")]
    public void A_path_is_seen_from_where_the_program_was_started(string typed, string full) =>
        Assert.Equal(Path.GetFullPath(full), TypedPath.Full(typed, Path.GetFullPath("/studio")));

    [Theory]
    [InlineData("~", "")]
    [InlineData("~/prints", "prints")]
    [InlineData("'~/prints'", "prints")]
    public void A_tilde_is_home(string typed, string below) =>
        Assert.Equal(Path.TrimEndingDirectorySeparator(Path.Combine(Home, below)), TypedPath.Full(typed, Path.GetFullPath("/studio")));
}
