namespace EditionRegister.UseCases.Tests.Looking;

/// <summary>What somebody might type: pieces of texts there are, mostly short, one to three of them, now and then mistyped or in other case.</summary>
internal sealed class TypedWords(IReadOnlyList<string> bits, int seed)
{
    private readonly Random _random = new(seed);

    public string Next() => string.Join(' ', Enumerable.Range(0, 1 + _random.Next(3)).Select(_ => Word()));

    private string Word()
    {
        var bit = bits[_random.Next(bits.Count)];
        var from = _random.Next(bit.Length + 1);
        var piece = bit.Substring(from, Math.Min(_random.Next(1, 7), bit.Length - from));

        return _random.Next(8) switch
        {
            0 => piece.ToLowerInvariant() + (char)_random.Next('a', 'z'),
            1 or 2 or 3 => piece.ToLowerInvariant(),
            _ => piece,
        };
    }
}
