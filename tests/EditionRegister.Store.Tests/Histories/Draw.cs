using EditionRegister.Domain.Facts;

namespace EditionRegister.Store.Tests.Histories;

/// <summary>Draws values for a generated history: the same seed, the same history, on every machine.</summary>
internal sealed class Draw(string seed)
{
    private static readonly string[] Pieces =
    [
        "Harbour", "at low tide", "Café à l’aube", "Łódź", "Ærø", "naïve", "straße", "İstanbul", "ılık", "東京湾", "版画", "한지", "שלום", "مرسى",
        "🎨", "👩🏽‍🎨", "e\u0301tude", "“in the plan chest”", "it's", "\"quoted\"", "back\\slash", "100 %", "under_score", "{[,]}", "<b>", ";--",
        "\u0001", "\u001f", "\t", "\n", "\r\n", "\u007f", "\u0085", "\u2028", "\ufeff", "\ufffd", "\u202egnihte", "\U0010ffff", "ﬁne", "Ⅳ/Ⅹ", " ",
    ];

    private readonly SeededRandomness _source = new(seed);

    public int Below(int bound) => _source.Below(bound);

    public int Between(int first, int last) => first + Below(last - first + 1);

    public bool Chance(int percent) => Below(100) < percent;

    public T Of<T>(params IReadOnlyList<T> choices) => choices[Below(choices.Count)];

    /// <summary>Up to four pieces of text such as people, programs and scanners have put into files.</summary>
    public string Text() => string.Join(' ', Enumerable.Range(0, Between(1, 4)).Select(_ => Of(Pieces)));

    public FactValue TextOrNull() => Chance(30) ? FactValue.Null : Text();

    public FactValue NumberOrNull(int first, int last) => Chance(30) ? FactValue.Null : Between(first, last);

    public FactValue WideOrNull() => Chance(30) ? FactValue.Null : 9_007_199_254_740_991L - Below(1000);

    public string Word(string start) => $"{start}-{Below(1_000_000_000)}";

    public string YesNo() => Of("yes", "no");

    /// <summary>A date as written with its earliest and latest day, under the fact names the catalogue uses.</summary>
    public (string Fact, FactValue Value)[] Date(string name, string? stem = null)
    {
        var bounds = stem ?? name;
        var year = Between(1890, 2026);

        var (text, earliest, latest) = Below(4) switch
        {
            0 => (FactValue.Null, FactValue.Null, FactValue.Null),
            1 => ((FactValue)$"{year}", (FactValue)$"{year}-01-01", (FactValue)$"{year}-12-31"),
            2 => ($"{year}-07-14", $"{year}-07-14", $"{year}-07-14"),
            _ => ($"../{year}", FactValue.Null, $"{year}-12-31"),
        };

        return [(name, text), (bounds + "_earliest", earliest), (bounds + "_latest", latest), (bounds + "_edtf", text.IsNull || Chance(60) ? FactValue.Null : $"{year}~")];
    }

    /// <summary>What a text says of number, edition and state, under the fact names the catalogue uses.</summary>
    public (string Fact, FactValue Value)[] Said(string of) =>
    [
        ($"{of}_kind", Of("numbered", "proof", "state", "size", "open", "declined")), ($"{of}_series", Of("edition", "A/P", "H.C.")), ($"{of}_number", NumberOrNull(1, 12)),
        ($"{of}_size", NumberOrNull(12, 90)), ($"{of}_hedge", Of("at-least", "at-most", "about")), ($"{of}_notation", Of("arabic", "roman", "letters")),
        ($"{of}_state", NumberOrNull(1, 3)), ($"{of}_state_of", NumberOrNull(3, 5)),
    ];
}
