using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions.Copies;

/// <summary>What a text as a whole says against numbers in it: dates, measures, volumes, and where its quotation marks open.</summary>
internal sealed class Surroundings
{
    private readonly TokenText _text;

    // Whether a quotation is open before each token; null where the text has no quotation marks.
    private bool[]? _open;
    private bool _isOpen;

    public Surroundings(TokenText text)
    {
        _text = text;

        for (var at = 0; at < text.Count; at++)
        {
            Look(at);
        }
    }

    /// <summary>The first token of the first measure; beyond the text where there is none.</summary>
    public int FirstMeasure { get; private set; } = int.MaxValue;

    /// <summary>A date of three parts stands somewhere.</summary>
    public bool HasDate { get; private set; }

    /// <summary>A volume of something printed stands somewhere.</summary>
    public bool HasVolume { get; private set; }

    /// <summary>A bracket, an elevation, an entablature: the text describes a drawing, and its fractions are parts.</summary>
    public bool IsOfADrawing { get; private set; }

    /// <summary>A quotation was opened before the token and is not closed there.</summary>
    public bool IsQuoted(int at) => _open is { } open && (at < open.Length ? open[at] : _isOpen);

    private void Look(int at)
    {
        if (_open is { } open)
        {
            open[at] = _isOpen;
        }

        if (_text.IsDigits(at))
        {
            HasDate |= !HasDate && IsDate(at);
            Meet(at, IsMixedNumber(at) || IsAcross(at) || Units.IsLength(_text, at + 1));
        }
        else if (_text.IsWord(at))
        {
            IsOfADrawing |= _text.Word(at) is "bracket" or "brackets" or "elevation" or "entablature" or "cornice" or "moulding" or "molding";
            HasVolume |= _text.Word(at) is "vol" or "vols" or "volume" or "bd" && _text.IsDigits(_text.IsSign(at + 1, '.') ? at + 2 : at + 1);
            Meet(at, _text.Word(at) is "scale" or "scales" or "echelle" or "masstab" or "massstab");
        }
        else
        {
            LookAtSign(at);
        }
    }

    private void LookAtSign(int at)
    {
        var isBehindDigits = _text.IsDigits(at - 1) && !_text.IsApart(at);

        if (_text.IsSign(at, '"'))
        {
            Quote(at, isBehindDigits);
        }
        else if (_text.IsSign(at, '\''))
        {
            Meet(at - 1, isBehindDigits && _text.Word(at + 1) is not "s");
        }
        else if (_text.IsSign(at, '='))
        {
            Meet(at, _text.IsDigits(at - 1) || _text.IsDigits(at + 1));
        }
    }

    /// <summary>A quotation mark closes what is open, is an inch behind a figure, and opens otherwise.</summary>
    private void Quote(int at, bool isBehindDigits)
    {
        _open ??= new bool[_text.Count];

        if (_isOpen)
        {
            _isOpen = false;
        }
        else if (isBehindDigits || at + 1 == _text.Count)
        {
            Meet(at - 1, isBehindDigits);
        }
        else
        {
            _isOpen = true;
        }
    }

    /// <summary>3/20/65, 10-14-59, 3.1.37, 2/28/'48.</summary>
    private bool IsDate(int at)
    {
        var sign = _text.IsSign(at + 1, '/') ? '/' : _text.IsSign(at + 1, '-') ? '-' : _text.IsSign(at + 1, '.') ? '.' : ' ';
        var last = _text.IsSign(at + 4, '\'') ? at + 5 : at + 4;

        return sign != ' ' && _text.IsDigits(at + 2) && _text.IsSign(at + 3, sign) && _text.IsDigits(last)
            && !_text.IsApart(at + 1) && !_text.IsApart(at + 2) && _text.Figure(at) <= 31 && _text.Figure(at + 2) <= 31;
    }

    /// <summary>7 3/8.</summary>
    private bool IsMixedNumber(int at) =>
        _text.IsDigits(at + 1) && _text.IsApart(at + 1) && _text.IsSign(at + 2, '/') && Units.IsRulersPart(_text.Figure(at + 1), _text.Figure(at + 3));

    /// <summary>9 x 10.</summary>
    private bool IsAcross(int at) => (_text.IsWord(at + 1, "x") || _text.IsSign(at + 1, '×')) && _text.IsDigits(at + 2);

    private void Meet(int at, bool isMeasure) => FirstMeasure = isMeasure ? Math.Min(FirstMeasure, at) : FirstMeasure;
}
