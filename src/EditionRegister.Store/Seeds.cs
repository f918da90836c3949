using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Conditions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Sqlite;

namespace EditionRegister.Store;

/// <summary>The first entry of every register: its own identity, and the growing lists as the trade has them.</summary>
internal static class Seeds
{
    public static bool Sow(Writing writing, bool demo)
    {
        var deed = writing.On(Root.Register);
        Span<byte> uid = stackalloc byte[16];
        writing.Randomness.Fill(uid);
        deed.Set("register", 1, ("uid", Convert.ToHexStringLower(uid)), ("schema", Schema.Newest), ("demo", YesNo(demo)));

        foreach (var kind in NumberingKind.All)
        {
            deed.Set("numbering_kind", deed.NewId("numbering_kind"),
                ("word", kind.Word), ("mark", kind.Mark), ("name", kind.Name),
                ("in_size", YesNo(kind.InSize)), ("in_total", YesNo(kind.InTotal)), ("for_sale", YesNo(kind.ForSale)));
        }

        foreach (var role in Role.All)
        {
            deed.Set("role", deed.NewId("role"), ("word", role.Word), ("name", role.Name));
        }

        foreach (var fault in Fault.All)
        {
            deed.Set("fault", deed.NewId("fault"), ("word", fault.Word), ("name", fault.Name));
        }

        foreach (var move in MoveKind.All)
        {
            SowMove(deed, move);
        }

        SowTerms(deed);
        SowTechniques(deed);

        return true;
    }

    /// <summary>What the lists of an older form lack, beside the facts of the entry that upgrades it.</summary>
    public static void SowWhatCameAfter(int form, Deed deed)
    {
        if (form < 3)
        {
            SowMove(deed, MoveKind.SubConsigned);
            SowMove(deed, MoveKind.WorkedOver);
            SowTerms(deed);
        }

        SowTechniques(deed);
    }

    private static void SowMove(Deed deed, MoveKind move) => deed.Set("move_kind", deed.NewId("move_kind"),
        ("word", move.Word), ("name", move.Name), ("chain", move.Chain), ("leaves", YesNo(move.Leaves)));

    private static void SowTerms(Deed deed)
    {
        foreach (var term in ConditionTerm.All)
        {
            deed.Set("condition_term", deed.NewId("condition_term"), ("word", term.Word), ("name", term.Name));
        }
    }

    private static void SowTechniques(Deed deed)
    {
        foreach (var technique in Technique.All)
        {
            deed.Set("technique", deed.NewId("technique"), ("word", technique.Word), ("name", technique.Name), ("aat", technique.Aat.Length == 0 ? null : technique.Aat));
        }
    }

    private static string YesNo(bool yes) => yes ? "yes" : "no";
}
