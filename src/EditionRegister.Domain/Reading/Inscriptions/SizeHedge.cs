namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>How sure a text is of the size it names.</summary>
public enum SizeHedge
{
    None,

    /// <summary>At least so many: the figure stands in <see cref="EditionStatement.Of"/>.</summary>
    AtLeast,

    /// <summary>Less or no more than so many: the figure is a bound, and no size.</summary>
    AtMost,

    /// <summary>About, estimated, possibly, between two figures, or with a question mark.</summary>
    About,
}
