using EditionRegister.Domain.Codes;
using EditionRegister.Store.Logbook;

namespace EditionRegister.UseCases.Works;

/// <summary>Draws register codes that were never given.</summary>
internal static class CodeDrawing
{
    public static Func<RegisterCode> From(Writing writing)
    {
        HashSet<string> drawn = new(StringComparer.Ordinal);

        return () =>
        {
            while (true)
            {
                var code = RegisterCode.Draw(writing.Randomness.Below);

                if (drawn.Add(code.Text) && !writing.Read.CodeWasEverGiven(code.Text))
                {
                    return code;
                }
            }
        };
    }
}
