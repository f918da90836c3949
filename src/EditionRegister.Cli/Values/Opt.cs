using System.CommandLine;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Reading.Techniques;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Options whose values are read by the register's own types.</summary>
internal static class Opt
{
    public static Option<string?> Text(string name, string word, string description) =>
        new(name) { HelpName = word, Description = description, CustomParser = Given.One<string?>(TextValue.TryRead!, TextValue.Form) };

    /// <summary>A text that stays as written and is read beside.</summary>
    public static Option<string?> Words(string name, string word, string description, ReadWords inOtherWords) => new WordsOption<string?>(name, inOtherWords)
    {
        HelpName = word,
        Description = description,
        CustomParser = Given.One<string?>(TextValue.TryRead!, TextValue.Form),
    };

    /// <summary>A sheet's number as it stands there.</summary>
    public static Option<string?> SheetNumber(string name, string description) => Words(name, "TEXT", description, (text, own, _) => InscriptionSaid.OfNumber(text, own));

    /// <summary>An edition in somebody's words.</summary>
    public static Option<string?> Statement(string description) => Words("--statement", "TEXT", description, (text, own, _) => InscriptionSaid.OfEdition(text, own));

    /// <summary>How many an edition has, sure or not.</summary>
    public static Option<StatedEdition?> EditionSize(string name, string description) => new ReadOption<StatedEdition?>(name, stated => stated?.Words?.InWords())
    {
        HelpName = "SIZE",
        Description = description,
        CustomParser = Given.One<StatedEdition?>(TryReadSize, "how many there are, such as 12, at least 49 or c. 50"),
    };

    public static Option<string[]?> Texts(string name, string word, string description) => new(name)
    {
        HelpName = word,
        Description = $"{description} May be repeated.",
        Arity = ArgumentArity.OneOrMore,
        AllowMultipleArgumentsPerToken = false,
        CustomParser = Given.Many<string>(TextValue.TryRead, TextValue.Form),
    };

    /// <param name="name">The option.</param>
    /// <param name="what">What it numbers: "an edition".</param>
    /// <param name="description">One line.</param>
    public static Option<long?> Id(string name, string what, string description) =>
        new(name) { HelpName = "N", Description = description, CustomParser = Given.One<long?>(NumberValue.TryReadId, $"the number of {what}, such as 3") };

    public static Option<int?> Count(string name, string description) =>
        new(name) { HelpName = "N", Description = description, CustomParser = Given.One<int?>(NumberValue.TryReadCount, "a whole number, such as 12") };

    /// <summary>A count that is at least one.</summary>
    public static Option<int?> Some(string name, string description) =>
        new(name) { HelpName = "N", Description = description, CustomParser = Given.One<int?>(NumberValue.TryReadSome, "a whole number from one, such as 12") };

    public static Option<RecordedDate?> Date(string name, string description) =>
        new ReadOption<RecordedDate?>(name, date => date?.InOtherWords)
        {
            HelpName = "DATE",
            Description = description,
            CustomParser = Given.One<RecordedDate?>(RecordedDate.TryRead, $"a date such as {RecordedDate.Form}", RecordedDate.WhyNot),
        };

    /// <summary>A size in millimetres, or in words that are kept as written and read.</summary>
    /// <param name="name">The option.</param>
    /// <param name="part">What it is the size of.</param>
    /// <param name="description">One line.</param>
    public static Option<RecordedSize?> Size(string name, SizePart part, string description) => new ReadOption<RecordedSize?>(name, size => size?.InOtherWords)
    {
        HelpName = "SIZE",
        Description = description,
        CustomParser = Given.Explained<RecordedSize>((string text, out RecordedSize? size, out string? whyNot) => RecordedSize.TryRead(text, part, out size, out whyNot)),
    };

    /// <summary>A paper in words that are kept as written and read.</summary>
    public static Option<string?> Paper(string name, string description) => new ReadOption<string?>(name, PaperAsRead.Of)
    {
        HelpName = "TEXT", Description = description, CustomParser = Given.One<string?>(TextValue.TryRead!, TextValue.Form),
    };

    /// <summary>One of a closed list of words.</summary>
    public static Option<string?> Word(string name, IReadOnlyList<string> words, string description) =>
        new(name) { HelpName = string.Join('|', words), Description = description, CustomParser = Given.One<string?>(WordValue.In(words), WordValue.Form(words)) };

    /// <summary>How something is printed, in words that are kept as written and read.</summary>
    public static Option<string?> Technique(string description) => new ReadOption<string?>("--technique", (text, own) => TechniqueAsRead.Of(text, own().Techniques))
    {
        HelpName = "TEXT", Description = description, CustomParser = Given.One<string?>(TextValue.TryRead!, TextValue.Form),
    };

    public static Option<bool> Flag(string name, string description) => new(name) { Description = description };

    /// <summary>Impressions or numbers as people list them.</summary>
    public static Option<string?> Ranges(string name, string word, string description) =>
        new(name) { HelpName = word, Description = description, CustomParser = Given.Sound(NumberRanges.Plausible) };

    public static Option<string?> Numbering(string name, string description) =>
        new(name) { HelpName = "NUMBERING", Description = description, CustomParser = Given.Sound(NumberingPlan.Plausible) };

    public static Option<string[]?> Numberings(string name, string description) => new WordsOption<string[]?>(name, (text, own, _) => NumberingPlans.Read(text, own).Stated?.Words?.InWords(own))
    {
        HelpName = "NUMBERING",
        Description = $"{description} May be repeated.",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = Given.AllSound(NumberingPlans.Plausible),
    };

    private static bool TryReadSize(string text, out StatedEdition? value)
    {
        var stated = StatedEdition.Read(text, OwnWords.None);
        value = stated is { WhyNot: null } and ({ Size: not null } or { Hedge: not null }) ? stated : null;

        return value is not null;
    }
}
