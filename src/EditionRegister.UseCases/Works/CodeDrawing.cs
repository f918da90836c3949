using EditionRegister.Domain.Codes;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Works;

/// <summary>Draws register codes that were never given.</summary>
internal static class CodeDrawing
{
    public static Func<RegisterCode> From(Writing writing) => From(writing, writing.Randomness);

    /// <summary>Codes of matrices come from a source of their own, so that those of sheets are the same whatever is recorded of blocks.</summary>
    public static Func<RegisterCode> ForMatrices(Writing writing) => From(writing, writing.Randomness.Beside);

    private static Func<RegisterCode> From(Writing writing, Randomness randomness)
    {
        HashSet<string> drawn = new(StringComparer.Ordinal);

        return () =>
        {
            while (true)
            {
                var code = RegisterCode.Draw(randomness.Below);

                if (drawn.Add(code.Text) && !writing.Read.CodeWasEverGiven(code.Text))
                {
                    return code;
                }
            }
        };
    }
}
