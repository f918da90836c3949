namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>"Linocut (reduction)", "xylographie à planche perdue": a reduction beside a block is a reduction of that block.</summary>
internal static class Reductions
{
    public static List<Technique> Joined(List<Technique> techniques)
    {
        var at = techniques.FindIndex(technique => technique.Word == "reduction-print");

        if (at < 0)
        {
            return techniques;
        }

        foreach (var beside in new[] { at - 1, at + 1 })
        {
            if (beside >= 0 && beside < techniques.Count && Of(techniques[beside]) is { } reduction)
            {
                techniques[beside] = reduction;
                techniques.RemoveAt(at);

                return [.. techniques.Distinct()];
            }
        }

        return techniques;
    }

    private static Technique? Of(Technique technique) => technique.Word switch
    {
        "linocut" => Technique.Find("reduction-linocut"),
        "woodcut" or "colour-woodcut" => Technique.Find("reduction-woodcut"),
        _ => null,
    };
}
