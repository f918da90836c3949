using EditionRegister.Store;

namespace EditionRegister.Cli.Tests;

/// <summary>The same codes in every run of a test, however many salts are drawn between them.</summary>
internal sealed class RepeatedRandomness : Randomness
{
    private readonly SeededRandomness _codes = new("codes");
    private readonly SeededRandomness _salts = new("salts");

    public override Randomness Beside { get; } = new SeededRandomness("codes beside");

    public override void Fill(Span<byte> bytes) => _salts.Fill(bytes);

    public override int Below(int bound) => _codes.Below(bound);
}
