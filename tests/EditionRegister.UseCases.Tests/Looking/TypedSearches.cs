namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>What somebody might type who knows what a register understands: numbers, dates and techniques among pieces of words, one to three of them.</summary>
internal sealed class TypedSearches(IReadOnlyList<string> bits, int seed)
{
    private static readonly string[] Understood =
    [
        "A/P 2", "AP II", "A/P II/V", "A/P V", "2/5 A/P", "A/P", "ap 2", "3/12", "2/12", "IV/X", "7/50", "1/2", "H.C. C", "H.C. 3", "B.A.T.", "P/P 1", "W/P 2", "trial proof 2", "M.P. 2", "M.P.", "no. 3/12",
        "2019", "c. 2019", "1960s", "2018-2020", "2024-03", "spring 2024", "before 1950", "after 2020", "about 1926", "2021", "2024-07", "5 March 2024",
        "etching", "Radierung", "eau-forte", "linocut", "Linolschnitt", "woodcut", "Siebdruck", "etching and aquatint", "aquatint", "lithograph",
        "2", "12", "rain", "kozo", "colours",
    ];

    private readonly Random _random = new(seed);
    private readonly TypedWords _words = new(bits, seed);

    public string Next() => string.Join(' ', Enumerable.Range(0, 1 + _random.Next(3)).Select(_ => _random.Next(4) == 0 ? _words.Next() : Understood[_random.Next(Understood.Length)]));
}
