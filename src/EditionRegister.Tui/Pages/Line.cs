using EditionRegister.Domain.Text;

namespace EditionRegister.Tui.Pages;

/// <summary>A stretch of a line, all in one tone.</summary>
internal readonly record struct Bit(string Text, Tone Tone = Tone.Plain);

/// <summary>One line of a page: text in tones. Text of others may stand in it as it is; the screen shows it safely.</summary>
internal sealed record Line(IReadOnlyList<Bit> Bits)
{
    public static Line Empty { get; } = new([]);

    /// <summary>Terminal columns.</summary>
    public int Width => Bits.Sum(bit => TextWidth.Of(SafeText.Show(bit.Text)));

    public static implicit operator Line(string text) => new([new Bit(text)]);

    public static Line Of(string text, Tone tone = Tone.Plain) => new([new Bit(text, tone)]);

    public Line Then(string text, Tone tone = Tone.Plain) => new([.. Bits, new Bit(text, tone)]);

    /// <summary>A label in a column of its own, then its value.</summary>
    public static Line Fact(string label, string value, int labelColumns = 16) => Of(TextWidth.Pad(label, labelColumns), Tone.Quiet).Then(value);

    public override string ToString() => string.Concat(Bits.Select(bit => bit.Text));
}
