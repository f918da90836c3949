using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Text;

namespace EditionRegister.Domain.Reading.Papers;

/// <summary>What was found of a paper so far. The first of each kind counts; each method says whether it was met before.</summary>
internal sealed class PaperFound
{
    private readonly List<PaperEdge> _edges = [];
    private readonly List<string> _notes = [];
    private string? _maker;
    private int? _grams;
    private PaperWeight? _pounds;
    private Size? _basis;
    private string? _lot;
    private Size? _sheet;
    private string? _sheetName;

    /// <summary>A basis size stands alone, or beside pounds that have one of their own.</summary>
    public bool HasLooseBasis => _basis is not null && _pounds is not { Basis: null };

    private PaperWeight? Weight => _grams is null && _pounds is null ? null : (_pounds ?? new PaperWeight()) with { GramsWritten = _grams, Basis = _pounds is null ? null : _pounds.Basis ?? _basis };

    public bool Lot(string lot) => IsSecond(ref _lot, lot);

    public bool Maker(string maker) => IsSecond(ref _maker, maker);

    public bool Pounds(PaperWeight pounds) => IsSecond(ref _pounds, pounds);

    public bool Basis(Size basis) => IsSecond(ref _basis, basis);

    public bool Grams(int grams)
    {
        var isSecond = _grams is not null;
        _grams ??= grams;

        return isSecond;
    }

    public bool Edge(PaperEdge edge)
    {
        var isSecond = _edges.Exists(other => other.Kind == edge.Kind);
        _edges.AddRange(isSecond ? [] : [edge]);

        return isSecond;
    }

    public bool Sheet(Measured read)
    {
        if (_sheet is null && read.Disagreement() is { } disagreement)
        {
            _notes.Add(disagreement);
        }

        return IsSecond(ref _sheet, read.Size!);
    }

    /// <param name="isoName">A name of the standard.</param>
    public bool Sheet(string isoName)
    {
        var isSecond = IsSecond(ref _sheet, IsoSheet.Of(isoName)!);
        _sheetName = isSecond ? _sheetName : isoName;

        return isSecond;
    }

    public void Note(string sentence) => _notes.Add(sentence);

    public ReadPaper With(string? name, IReadOnlyList<string> left, IReadOnlyList<Range> spans) => new()
    {
        Name = name,
        Maker = _maker,
        Weight = Weight,
        Edges = _edges,
        Lot = _lot,
        Sheet = _sheet,
        SheetName = _sheetName,
        Notes = name is not null && _sheet is null && OldSheetNames.In(name) is { } old ? [.. _notes, OfOldName(old)] : _notes,
        Left = left,
        Spans = spans,
    };

    private static string OfOldName(string old) => $"“{SafeText.Show(old)}” is an old name of sheets that differed by maker and time, so no size is taken from it. Measure the sheet.";

    private static bool IsSecond<T>(ref T? place, T value)
        where T : class
    {
        var isSecond = place is not null;
        place ??= value;

        return isSecond;
    }
}
