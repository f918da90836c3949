using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>Figures that look like a size and are not read as one, and why not.</summary>
public sealed record SizeDeclined
{
    private const int MostShown = 40;

    internal SizeDeclined(string written, SizeFault fault, Range span) => (Written, Fault, Span) = (written, fault, span);

    /// <summary>As it stands in the text.</summary>
    public string Written { get; }

    /// <summary>Where in the text it stands.</summary>
    public Range Span { get; }

    /// <summary>A whole sentence for a person: what is wrong with it, and what to write.</summary>
    public string WhyNot => $"“{Shown}” was not read as a size: {Reason}";

    internal SizeFault Fault { get; }

    private string Shown => SafeText.Show(Written.Length <= MostShown ? Written : Written[..MostShown] + "…");

    private string Reason => Fault switch
    {
        SizeFault.NoUnit => "it has no unit. Write mm, cm or in behind it.",
        SizeFault.NoFraction => "no ruler has that fraction. Write it like 7 3/8.",
        SizeFault.TwoReadings => "its figures can be read in two ways. Write thousands without comma, point or blank, and decimals with a point.",
        SizeFault.ARange => "it gives a range. Write the size of one sheet.",
        SizeFault.Nothing => "a length of it is nothing.",
        SizeFault.TooLarge => "a length of it is more than 100 metres.",
        _ => "it gives more lengths than height, width and depth.",
    };
}
