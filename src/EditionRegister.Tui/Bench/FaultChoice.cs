using EditionRegister.Domain.Impressions;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Bench;

/// <summary>The faults a sheet is left out for, each under one key: its first letter, or another of its letters where that is taken.</summary>
internal static class FaultChoice
{
    public static Choice Of(string about, Func<Fault, Task<Opening?>> leaveOut) =>
        new($"Why is {about} left out?", [.. Keyed().Select(fault => new Choosable(fault.Key, fault.Fault.Name, () => leaveOut(fault.Fault)))]);

    private static IEnumerable<(string Key, Fault Fault)> Keyed()
    {
        HashSet<char> taken = [];

        foreach (var fault in Fault.All)
        {
            var key = fault.Name.First(letter => char.IsAsciiLetterLower(letter) && taken.Add(letter));

            yield return (key.ToString(), fault);
        }
    }
}
