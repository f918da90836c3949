using EditionRegister.Domain.Text;
using EditionRegister.Domain.Works;
using EditionRegister.Formats.Csv;
using EditionRegister.Store.Reading;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>A whole file understood against the register as it stands: works listed, remarks, and everything that keeps it from being read in.</summary>
internal sealed class FileListing
{
    private readonly Reader _reader;
    private readonly List<RowProblem> _problems = [];
    private readonly RowReader _rows;

    public FileListing(Reader reader, CsvTable table, IReadOnlyList<ColumnMatch> columns, string currency)
    {
        _reader = reader;
        _rows = new RowReader(columns, currency, _problems, reader.OwnWords);
        var rows = table.Rows.Select(_rows.Read).ToList();
        Works = [.. rows.GroupBy(KeyOf).Select(group => new ListedWork([.. group], KnownWork(group.First())))];
        CodesAreFree(rows);

        foreach (var work in Works)
        {
            NumbersAreFree(work);
        }
    }

    public IReadOnlyList<ListedWork> Works { get; }

    public IReadOnlyList<RowProblem> Problems => [.. _problems.OrderBy(problem => problem.Line)];

    public IReadOnlyList<RowProblem> Remarks => _rows.Remarks;

    public IReadOnlyList<TextRead> Readings => _rows.Readings;

    private static string KeyOf(ReadRow row) =>
        row.TitleState == "given"
            ? string.Join('\u001f', row.Maker, row.Title, row.Year.Text, row.Technique)
            : $"\u001eline {row.Line}";

    private Work? KnownWork(ReadRow row)
    {
        if (row.TitleState != "given" || row.Maker is null)
        {
            return null;
        }

        var maker = SearchText.Fold(row.Maker);

        return _reader.WorksTitled(row.Title!).Select(id => _reader.Work(id)!).FirstOrDefault(work =>
            work.Makers.Any(known => SearchText.Fold(known.FullName) == maker)
            && (row.Year.Text is null || row.Year.Text == work.Year.Text)
            && (row.Technique is null || row.Technique == work.Technique));
    }

    private void CodesAreFree(List<ReadRow> rows)
    {
        Dictionary<string, int> lines = new(StringComparer.Ordinal);

        foreach (var (row, code) in rows.Where(row => row.Code is not null).Select(row => (row, row.Code!)))
        {
            if (!lines.TryAdd(code.Text, row.Line))
            {
                _rows.Problem(row.Line, ReadInColumn.Code, code.ToString(), FormattableString.Invariant($"is on line {lines[code.Text]} already; every sheet has a code of its own."));
            }
            else if (_reader.FindCode(code.Text) is not null)
            {
                _rows.Problem(row.Line, ReadInColumn.Code, code.ToString(), "is in this register already; a file adds sheets and does not change those that are there.");
            }
        }
    }

    private void NumbersAreFree(ListedWork work)
    {
        foreach (var edition in work.Editions)
        {
            if (edition.Sizes.Count > 1)
            {
                var row = edition.Rows.First(row => row.EditionSize == edition.Sizes[1]);
                _rows.Problem(row.Line, ReadInColumn.EditionSize, FormattableString.Invariant($"{edition.Sizes[1]}"), FormattableString.Invariant($"the same edition has size {edition.Sizes[0]} on another line."));
            }

            foreach (var numbering in edition.Numberings)
            {
                NumbersAreFree(work, edition, numbering);
            }
        }
    }

    private void NumbersAreFree(ListedWork work, ListedEdition edition, ListedNumbering numbering)
    {
        Dictionary<int, int> lines = [];
        var given = Given(work, edition, numbering);

        foreach (var row in numbering.Rows)
        {
            if (row.Number is not null && (row.Standing is not ("kept" or "held-out") || (row.Standing == "held-out" && numbering.Kind.InSize)))
            {
                Problem(row, $"a sheet that is {row.Standing.Replace('-', ' ')} bears no number; put what stands on it in the inscription column.");
            }
            else if (numbering.OrdinalOf(row) is { } ordinal)
            {
                if (ordinal > numbering.Size)
                {
                    Problem(row, FormattableString.Invariant($"lies outside the edition size {numbering.Size}."));
                }
                else if (!lines.TryAdd(ordinal, row.Line))
                {
                    Problem(row, FormattableString.Invariant($"is on line {lines[ordinal]} already; no two sheets of one edition have one number. If the pencil says so on both, put it in the inscription column of one."));
                }
                else if (given.Contains(ordinal))
                {
                    Problem(row, "is given in this register already.");
                }
            }
        }

        void Problem(ReadRow row, string what) => _rows.Problem(row.Line, ReadInColumn.Number, row.Pencilled ?? "", what);
    }

    private static HashSet<int?> Given(ListedWork work, ListedEdition edition, ListedNumbering numbering) =>
        KnownEditions.Numbering(KnownEditions.Edition(work.Known, edition), numbering) is { } known
            ? [.. work.Known!.Impressions.Where(sheet => sheet.Numbering == known.Id).Select(sheet => sheet.Number)]
            : [];
}
