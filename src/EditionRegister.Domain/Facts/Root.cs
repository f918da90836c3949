using System.Globalization;

namespace EditionRegister.Domain.Facts;

/// <summary>The one thing an entry touches: the register, a person, a place, a work, a show or a batch.</summary>
public readonly record struct Root(string Kind, long Id)
{
    public static Root Register => new("register", 1);

    public static Root Person(long id) => new("person", id);

    public static Root Place(long id) => new("place", id);

    public static Root Work(long id) => new("work", id);

    public static Root Show(long id) => new("show", id);

    public static Root Batch(long id) => new("batch", id);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Kind}/{Id}");
}
