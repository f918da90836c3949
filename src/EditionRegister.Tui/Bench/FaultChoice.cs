using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>The faults a sheet is left out for, each under one key: its first letter, or another of its letters where that is taken.</summary>
internal static class FaultChoice
{
    public static Choice Of(string about, OwnWords words, Func<Fault, Task<Opening?>> leaveOut) =>
        new($"Why is {about} left out?", [.. Keyed(words).Select(fault => new Choosable(fault.Key, fault.Fault.Name, () => leaveOut(fault.Fault)))]);

    private static IEnumerable<(string? Key, Fault Fault)> Keyed(OwnWords words)
    {
        HashSet<char> taken = [];

        foreach (var fault in words.AllFaults)
        {
            // A fault of the register's own whose letters are all taken is picked with the arrows.
            var key = fault.Name.Cast<char?>().FirstOrDefault(letter => char.IsAsciiLetterLower(letter!.Value) && taken.Add(letter.Value));

            yield return (key?.ToString(), fault);
        }
    }
}
