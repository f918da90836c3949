namespace EditionRegister.Domain.Reading.Sizes;

/// <summary>What two systems of measure, side by side, say of each other.</summary>
public enum Agreement
{
    /// <summary>Only one was given.</summary>
    OneSystem,

    /// <summary>They agree within what rounding explains.</summary>
    Agree,

    /// <summary>They differ by more than rounding explains: one of them is mistyped.</summary>
    Differ,
}
