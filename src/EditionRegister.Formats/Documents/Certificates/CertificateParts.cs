using EditionRegister.Domain.Documents;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>The lines of a statement sorted by where they stand: title, number and maker at the head, code and serial by the QR code, the rest between.</summary>
internal sealed class CertificateParts
{
    private static readonly string[] Below = ["code", "serial", "issued", "supersedes"];

    private readonly CertificateStatement _statement;

    public CertificateParts(CertificateStatement statement)
    {
        _statement = statement;
        Title = First("title");
        Number = First("number");
        Maker = First("maker");
        Rows = [.. statement.Lines.Where(line => line != Title && line != Number && line != Maker && !Below.Contains(line.Key))];
    }

    public StatementLine? Title { get; }

    public StatementLine? Number { get; }

    public StatementLine? Maker { get; }

    public IReadOnlyList<StatementLine> Rows { get; }

    public StatementLine Code => Line("code", _statement.Code);

    /// <summary>What stands under the code.</summary>
    public IEnumerable<StatementLine> UnderCode
    {
        get
        {
            yield return Line("serial", _statement.Serial);
            yield return First("issued") ?? Line("issued", _statement.Issued);

            if (_statement.Supersedes is { } supersedes)
            {
                yield return Line("supersedes", supersedes);
            }
        }
    }

    // The label as it was frozen with the statement, where it was.
    private StatementLine Line(string key, string value) => new(key, First(key)?.Label ?? key, value);

    private StatementLine? First(string key) => _statement.Lines.FirstOrDefault(line => line.Key == key);
}
