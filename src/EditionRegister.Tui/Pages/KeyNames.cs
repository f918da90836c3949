using System.Globalization;

namespace EditionRegister.Tui.Pages;

/// <summary>How keys are named between the screen and the pages: a letter by itself, others by a word.</summary>
internal static class KeyNames
{
    /// <summary>Whether it is something typed, and not the name of a key.</summary>
    public static bool IsLetter(string key)
    {
        ArgumentNullException.ThrowIfNull(key);

        return key.Length > 0 && StringInfo.ParseCombiningCharacters(key).Length == 1 && !char.IsControl(key[0]);
    }
}
