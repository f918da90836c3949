using EditionRegister.Domain.Reading.Papers;

namespace EditionRegister.Domain.Facts;

/// <summary>What a run is printed on, and its sizes: the words as written, and beside them what was read in them.</summary>
public static class PaperFacts
{
    extension(Deed deed)
    {
        /// <param name="run">The print run.</param>
        /// <param name="text">As written; null where nobody said.</param>
        public void SetPaper(long run, string? text)
        {
            deed.Set("print_run", run, ("paper", text));

            foreach (var (fact, value) in Read(PaperReader.Read(text)))
            {
                // What the words do not say is said to be unsaid only where it may have stood there.
                if (!value.IsNull || !deed.IsNew("print_run", run))
                {
                    deed.Set("print_run", run, (fact, value));
                }
            }
        }

        /// <summary>Sizes in the words they were given in, beside the micrometres.</summary>
        public void SetWrittenSizes(long run, string? image, string? sheet)
        {
            foreach (var (fact, written) in new[] { ("image_written", image), ("sheet_written", sheet) })
            {
                if (written is not null || !deed.IsNew("print_run", run))
                {
                    deed.Set("print_run", run, (fact, written));
                }
            }
        }
    }

    private static (string Fact, FactValue Value)[] Read(ReadPaper paper) =>
    [
        ("paper_name", paper.Name), ("paper_maker", paper.Maker), ("paper_grammage", paper.Weight?.Grams), ("paper_pounds", paper.Weight?.Pounds),
        ("paper_basis_height", paper.Weight?.Basis?.Height.Micrometres), ("paper_basis_width", paper.Weight?.Basis?.Width.Micrometres),
        ("paper_height", paper.Sheet?.Height.Micrometres), ("paper_width", paper.Sheet?.Width.Micrometres),
        ("paper_edges", paper.Edges.Count == 0 ? null : string.Join(", ", paper.Edges)), ("paper_lot", paper.Lot),
    ];
}
