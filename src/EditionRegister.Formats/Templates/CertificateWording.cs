using EditionRegister.Domain;
using EditionRegister.Formats.Toml;

namespace EditionRegister.Formats.Templates;

/// <summary>The words on a certificate that are not facts, as <c>certificate.toml</c> has them.</summary>
public sealed record CertificateWording
{
    private const string File = "certificate.toml";

    /// <summary>What certificates came to state after the first release, in the shipped words: a file somebody wrote before need not have them.</summary>
    private static readonly Dictionary<string, string> CameLater = new(StringComparer.Ordinal)
    {
        ["labels.altered"] = "Altered on the sheet",
        ["labels.set"] = "Set of prints",
        ["labels.parts"] = "Its parts",
    };

    private readonly IReadOnlyDictionary<string, string> _words;

    private CertificateWording(IReadOnlyDictionary<string, string> words) => _words = words;

    /// <summary>The permanent keys of what a certificate can state, each of which has a label.</summary>
    public static IReadOnlyList<string> LabelKeys { get; } =
    [
        "maker", "title", "matrix-year", "printed", "technique", "paper", "image-size", "sheet-size", "number", "edition",
        "altered", "set", "parts", "proofs", "total", "state", "signature", "matrix-fate", "printer", "workshop", "code", "serial", "issued", "supersedes",
    ];

    /// <summary>Keys of what is stated only where it is true. A template of the register's own may be older than they are, and leave them out.</summary>
    public static IReadOnlyList<string> LaterKeys { get; } = [.. Domain.Documents.CertificateFacts.WhereTrue];

    public string Heading => _words["heading"];

    public string SignatureLabel => _words["signature-line"];

    public string DateLabel => _words["date-line"];

    /// <summary>That local law decides what a certificate must say.</summary>
    public string Caution => _words["caution"];

    /// <summary>Printed before the number and head of the logbook.</summary>
    public string Logbook => _words["logbook"];

    /// <summary>Before the number of each page, where there are several.</summary>
    public string Page => _words["page"];

    /// <summary>The language of these words, BCP 47.</summary>
    public string Language => _words["language"];

    /// <exception cref="RefusedException">A key is unknown, missing, or has no words; told with file and line.</exception>
    public static CertificateWording Load(string? overrideFolder)
    {
        string[] keys = ["heading", "signature-line", "date-line", "caution", "logbook", "page", "language", .. LabelKeys.Select(key => "labels." + key)];
        string[] later = [.. LaterKeys.Select(key => "labels." + key)];
        var toml = Read(overrideFolder, [.. keys, .. later]);
        var shipped = later.All(key => toml.Text(key) is not null) ? toml : Read(null, [.. keys, .. later]);

        CertificateWording wording = new(keys.Select(key => (Key: key, Words: Words(toml, key))).Concat(later.Select(key => (Key: key, Words: Words(toml.Text(key) is null ? shipped : toml, key))))
            .ToDictionary(one => one.Key, one => one.Words, StringComparer.Ordinal));

        return wording.Language.All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
            ? wording
            : throw toml.Wrong("language", "must be a language tag, such as \"en\" or \"de-CH\"");
    }

    /// <exception cref="KeyNotFoundException">The key is not among <see cref="LabelKeys"/> and <see cref="LaterKeys"/>.</exception>
    public string Label(string key) => _words["labels." + key];

    private static TomlText Read(string? overrideFolder, IReadOnlyList<string> keys)
    {
        var (text, fileName) = Templates.Read(File, overrideFolder);

        return TomlText.Parse(text, fileName, keys);
    }

    private static string Words(TomlText toml, string key)
    {
        // A template may break long sentences over lines; on paper they are one.
        var words = string.Join(' ', (toml.Text(key) ?? CameLater.GetValueOrDefault(key) ?? throw toml.Missing(key)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return words.Length > 0 ? words : throw toml.Wrong(key, "must not be empty");
    }
}
