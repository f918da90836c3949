using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Facts;

/// <summary>What stands on a sheet is set together with what was read in it: the text as written, and beside it number, edition, state and who made it.</summary>
public static class InscriptionFacts
{
    private const string Pencil = "pencil";
    private const string Says = "says";

    extension(Deed deed)
    {
        /// <summary>Sets the pencilled number of a sheet; null is that nothing stands there.</summary>
        /// <param name="sheet">The sheet.</param>
        /// <param name="text">The number as written.</param>
        /// <param name="own">The register's own kinds.</param>
        /// <param name="expected">The notation of the numbering the sheet has a number of, or null.</param>
        public void SetPencilled(long sheet, string? text, OwnWords own, Notation? expected = null)
        {
            deed.Set("impression", sheet, ("pencilled", text));
            deed.SetSaid("impression", sheet, Pencil, SheetReader.Pencil(text, expected, own));
        }

        /// <summary>Sets the text of an inscription; null is that it was rubbed out.</summary>
        /// <param name="inscription">Its row.</param>
        /// <param name="text">Letter by letter.</param>
        /// <param name="own">The register's own kinds.</param>
        /// <param name="before">What was read of who made it before; none of a new one.</param>
        public void SetInscription(long inscription, string? text, OwnWords own, IReadOnlyList<InscribedRole>? before = null)
        {
            deed.Set("inscription", inscription, ("text", text));
            deed.SetSaid("inscription", inscription, Says, SheetReader.Inscription(text, own));
            deed.SetRoles(inscription, SheetReader.Roles(text), before ?? []);
        }

        // What the sheet does not say is left out only where nothing can have stood there before.
        private void SetSaid(string table, long id, string of, SaidOfNumber? said)
        {
            FactValue[] values = [said?.Kind, said?.Series, said?.Number, said?.Size, said?.Hedge, said?.Notation, said?.State, said?.StateOf];
            var isNew = deed.IsNew(table, id);

            for (var i = 0; i < values.Length; i++)
            {
                if (!isNew || values[i] != FactValue.Null)
                {
                    deed.Set(table, id, ($"{of}_{SaidOfNumber.Facts[i]}", values[i]));
                }
            }
        }

        // Rows that stand are said anew: a second row in the same place would be refused while the first still stands.
        private void SetRoles(long inscription, IReadOnlyList<(string Role, string? Name)> roles, IReadOnlyList<InscribedRole> before)
        {
            for (var i = 0; i < roles.Count; i++)
            {
                deed.Set("inscription_role", i < before.Count ? before[i].Id : deed.NewId("inscription_role"),
                    ("inscription", inscription), ("ordinal", i + 1), ("role", roles[i].Role), ("name", roles[i].Name));
            }

            foreach (var old in before.Skip(roles.Count))
            {
                deed.Unset("inscription_role", old.Id);
            }
        }
    }
}
