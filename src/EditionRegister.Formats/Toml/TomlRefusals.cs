using EditionRegister.Domain;

namespace EditionRegister.Formats.Toml;

/// <summary>Every way in which a settings or template file is not read, in words with line and column.</summary>
internal sealed class TomlRefusals(string file)
{
    public RefusedException Broken(int line, int column, string message) => new(
        "toml-broken",
        $"{file} was not read: line {line}, column {column} is not TOML ({message}). Mend that line.");

    public RefusedException Unknown(int line, int column, string key, IReadOnlyList<string> known) => new(
        "toml-unknown-key",
        $"{file} was not read: line {line}, column {column} has {key}, which nothing reads. Take it out, or write one of these: {string.Join(", ", known)}.");

    public RefusedException Wrong(int line, int column, string key, string value, string whatIsRight) => new(
        "toml-wrong-value",
        $"{file} was not read: line {line}, column {column} says {key} = {value}; it {whatIsRight}.");

    public RefusedException Missing(int line, string key) => new(
        "toml-missing-key",
        $"{file} was not read: {key} is missing (line {line} is where it is looked for). Add it.");

    public RefusedException Geometry(string whatIsWrong) => new(
        "label-sheet-geometry",
        $"{file} was not read: {whatIsWrong}. Measure the sheet again and mend the file.");
}
