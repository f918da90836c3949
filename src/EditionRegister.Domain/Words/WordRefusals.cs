using EditionRegister.Domain.Numbers;

namespace EditionRegister.Domain.Words;

/// <summary>Why a register cannot make a word of its own so.</summary>
public static class WordRefusals
{
    public static RefusedException NotKebab(string word) =>
        new("word-not-kebab", $"“{word}” is no word for the register: it takes small letters, figures and hyphens, and begins with a letter, as in hospitality-copy. Nothing was changed. Write it so; how it is called on screens and papers is its name.");

    public static RefusedException Known(string what, string word, string name) =>
        new("word-known-already", $"The register knows the {what} {word} already: {name}. Nothing was changed. Use it, or make one under another word.");

    public static RefusedException NameMissing() =>
        new("word-name-missing", "A word of the register's own needs a name of at most 40 characters, as screens and papers say it. Nothing was changed. Give it with --name.");

    public static RefusedException NoThesaurusId(string id) =>
        new("technique-id-unfit", $"“{id}” is no id of the Getty Art & Architecture Thesaurus: these are figures alone, as in 300041365. Nothing was changed. Look it up there by its label, or leave it out.");

    public static RefusedException MarkUnfit(string mark) =>
        new("kind-mark-unfit", $"“{mark}” cannot be the mark of a kind. Nothing was changed. A mark is {OwnMark.Form}, at most 24 characters.");

    public static RefusedException MarkTaken(string mark, string taken) =>
        new("kind-mark-taken", $"“{mark}” would be read as {taken}. Nothing was changed. Choose a mark that nothing else is read as.");

    public static RefusedException SizeWithoutTotal() =>
        new("kind-size-without-total", "What counts in the edition size counts in the total of impressions too. Nothing was changed. Say --in-total yes, or --in-size no.");

    public static RefusedException NoOwnKind(string word) =>
        new("kind-not-own", $"“{word}” is no kind that this register made for itself, and only those are changed. Nothing was changed. `edreg kind list` shows them.");

    public static RefusedException KindInUse(string word, string what, int numberings) =>
        new("kind-in-use", $"{(numberings == 1 ? "A numbering is" : $"{numberings.ToString(System.Globalization.CultureInfo.InvariantCulture)} numberings are")} of the kind {word}, so {what} stays as it is: it would change what is declared or pencilled. Nothing was changed. Its name and whether it is for sale can be changed; for the rest make another kind.");

    public static RefusedException NothingSaid() =>
        new("kind-nothing-said", "Nothing was said that would change the kind. Nothing was changed. Give --mark, --name, --in-size, --in-total or --for-sale.");
}
