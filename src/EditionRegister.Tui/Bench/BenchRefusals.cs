using EditionRegister.Domain;

namespace EditionRegister.Tui.Bench;

/// <summary>What the register refuses, said in the words of a form before it is asked.</summary>
internal static class BenchRefusals
{
    public static RefusedException NoTitle() =>
        new("title-missing", "A work needs a title, or the word that says why it has none. Nothing was changed. Type the title, or choose untitled or not known.");

    public static RefusedException NoMaker() =>
        new("maker-missing", "A work needs its maker, or the word that nobody knows. Nothing was changed. Type who made it, or choose not known.");

    public static RefusedException NothingCounted() =>
        new("pile-not-counted", "How many sheets are in the pile cannot be told: neither the sheets started are given nor the pile itself. Nothing was changed. Type the sheets started, with those spoiled and unused; or count the pile.");
}
