using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;

namespace EditionRegister.Domain.Chains;

/// <summary>Writes the links of the two chains.</summary>
internal static class ChainFacts
{
    /// <summary>One move; answers the id of the link, so that more can be said of it.</summary>
    public static long Move(long impression, int ordinal, MoveKind kind, Position? from, Position to, RecordedDate moved, Deed deed)
    {
        var id = deed.NewId("whereabouts");
        deed.Set("whereabouts", id,
            ("impression", impression), ("ordinal", ordinal), ("kind", kind.Word),
            ("from_state", from?.State), ("from_place", from?.Place), ("from_holder", from?.Holder),
            ("to_state", to.State), ("to_place", to.Place), ("to_holder", to.Holder));
        deed.SetDate("whereabouts", id, "moved", moved);

        return id;
    }

    /// <summary>One transfer; answers the id of the link, so that more can be said of it.</summary>
    public static long Pass(long impression, int ordinal, MoveKind kind, Owner? from, Owner to, RecordedDate passed, Deed deed)
    {
        var id = deed.NewId("ownership");
        deed.Set("ownership", id,
            ("impression", impression), ("ordinal", ordinal), ("kind", kind.Word),
            ("from_state", from?.State), ("from_owner", from?.Person), ("to_state", to.State), ("to_owner", to.Person));
        deed.SetDate("ownership", id, "passed", passed);

        return id;
    }
}
