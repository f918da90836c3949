using System.Globalization;

namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>A figure as it is written, kept exactly: so many parts of so many, such as 59/8 for 7 3/8 and 302/10 for 30.2.</summary>
/// <param name="Above">How many parts; at most a million million.</param>
/// <param name="Below">Of how many in one, at most a million: the finest step it is written in.</param>
/// <param name="Next">The token after it.</param>
internal readonly record struct Figure(long Above, long Below, int Next)
{
    /// <summary>Written with a common fraction, not with decimals.</summary>
    public bool IsFraction { get; init; }

    /// <summary>1,220 or 1 220: a thousand, or something else, as the unit will say.</summary>
    public bool IsGrouped { get; init; }

    /// <summary>Grouped by a space: 3 300 may be two numbers.</summary>
    public bool IsSpaced { get; init; }

    public SizeFault Fault { get; init; }

    /// <summary>As cataloguers write it: 7 3/8, 30.2, 12.</summary>
    public string Shown => !IsFraction ? ((decimal)Above / Below).ToString(Below == 1 ? "0" : "0.0#####", CultureInfo.InvariantCulture)
        : Above < Below ? FormattableString.Invariant($"{Above}/{Below}")
        : Above % Below == 0 ? FormattableString.Invariant($"{Above / Below}")
        : FormattableString.Invariant($"{Above / Below} {Above % Below}/{Below}");

    public long Micrometres(LengthUnit unit) => ((2 * Above * Units.MicrometresIn(unit)) + Below) / (2 * Below);

    public long StepMicrometres(LengthUnit unit) => Math.Max(1, Units.MicrometresIn(unit) / Below);

    /// <summary>1,220 mm is more than a metre, 1,220 m is a little more than one; 1,220 cm is neither for sure.</summary>
    public Figure In(LengthUnit unit) => !IsGrouped ? this : unit switch
    {
        LengthUnit.Millimetre => this with { IsGrouped = false },
        LengthUnit.Metre => this with { Below = 1_000, IsGrouped = false },
        _ => this with { Fault = SizeFault.TwoReadings },
    };

    /// <summary>Inches with so many feet before them.</summary>
    public Figure WithFeet(long feet) => this with { Above = Above + (feet * 12 * Below) };
}
