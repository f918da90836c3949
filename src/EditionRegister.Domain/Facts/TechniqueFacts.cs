using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Facts;

/// <summary>How a work is printed: the words as written, and beside them the techniques of the list, the colours and the support that were read in them.</summary>
public static class TechniqueFacts
{
    extension(Deed deed)
    {
        /// <param name="work">The work.</param>
        /// <param name="text">As written; null where nobody said.</param>
        /// <param name="before">What was read in the words before; none for a new work.</param>
        /// <param name="own">Techniques of the register's own.</param>
        public void SetTechnique(long work, string? text, IReadOnlyList<WorkTechnique> before, IReadOnlyList<Technique> own)
        {
            var read = TechniqueReader.Read(text, own);
            deed.Set("work", work, ("technique", text));

            if (!deed.IsNew("work", work) || read.Colours is not null || read.Support is not null)
            {
                deed.Set("work", work, ("technique_colours", read.Colours), ("technique_support", read.Support));
            }

            foreach (var gone in before.Where(one => read.Techniques.All(technique => technique.Word != one.Technique)))
            {
                deed.Unset("work_technique", gone.Id);
            }

            for (var place = 1; place <= read.Techniques.Count; place++)
            {
                deed.SetOne(work, place, read.Techniques[place - 1].Word, before);
            }
        }

        private void SetOne(long work, int place, string word, IReadOnlyList<WorkTechnique> before)
        {
            if (before.FirstOrDefault(one => one.Technique == word) is not { } known)
            {
                deed.Set("work_technique", deed.NewId("work_technique"), ("work", work), ("ordinal", place), ("technique", word));
            }
            else if (known.Ordinal != place)
            {
                deed.Set("work_technique", known.Id, ("ordinal", place));
            }
        }
    }
}
