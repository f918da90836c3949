using System.Globalization;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Bench.Readings;

/// <summary>What museums say their prints are printed on: how much of it is name, and what else is read in it.</summary>
internal static class PaperFigures
{
    public static void Print(string folder, TextWriter output)
    {
        var path = Path.Combine(folder, "mediums.tsv");

        if (!File.Exists(path))
        {
            return;
        }

        var table = TableFile.Read(path);
        var papers = table.Rows.Select(row => TechniqueReader.Read(table[row, "text"]).Support).OfType<string>().Distinct(StringComparer.Ordinal).Select(text => (Text: text, Read: PaperReader.Read(text))).ToList();
        var changed = papers.Where(paper => paper.Read.Spans.Count + paper.Read.Left.Count + paper.Read.Notes.Count > 0).ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"papers: {papers.Count} supports; with a name {papers.Count(paper => paper.Read.Name is not null)}, nothing but a name {papers.Count - changed.Count}; written and read again the same {papers.Count(paper => PaperReader.Read(paper.Read.Write()).Write() == paper.Read.Write())}; the others:"));
        changed.ForEach(paper => output.WriteLine($"  {paper.Text} | {paper.Read.Explain()}"));
    }
}
