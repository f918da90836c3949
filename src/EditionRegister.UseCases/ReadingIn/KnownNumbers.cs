using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Records what is known of an old edition of ours, stretch by stretch: numbers that went before the register, and sheets that are still here.</summary>
public sealed class KnownNumbers(RegisterStore store)
{
    /// <summary>Noted of numbers that were sold before the register, where nothing else is said.</summary>
    public const string SoldBefore = "sold before the register, buyer not known";

    /// <summary>Numbers whose sheets went to people nobody knows. Answers how many.</summary>
    /// <param name="work">The work; its edition is made where it has none.</param>
    /// <param name="part">Which numbers, and of how many.</param>
    /// <param name="note">What is known of them all the same.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="KnownRefusals"/>, or a number that is given or accounted for.</exception>
    public int Sold(long work, KnownPart part, string? note = null) => store.Write("known-sold", writing =>
    {
        part.Numbering(writing.Read.WorkOrRefuse(work), "elsewhere", note ?? SoldBefore, writing.On(Root.Work(work)));

        return part.Ordinals.Count;
    });

    /// <summary>Sheets that are still known: each is made with its number, its code and the first step of its chains. Answers their codes.</summary>
    /// <param name="work">The work; its edition is made where it has none.</param>
    /// <param name="part">Which numbers, and of how many.</param>
    /// <param name="where">Where they are; neither is nobody knows.</param>
    /// <param name="sheets">What is said of each.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="KnownRefusals"/>, or a number that is given or accounted for.</exception>
    public IReadOnlyList<string> Here(long work, KnownPart part, SentTo where, KnownSheets sheets) => store.Write("known-here", writing =>
    {
        var found = writing.Read.WorkOrRefuse(work);
        var book = writing.Read.Book;
        var deed = writing.On(Root.Work(work));
        var numbering = part.Numbering(found, "open", null, deed);
        long? with = where.With is { } who ? Persons.Find(book, who) : null;
        var position = where.Place is { } place ? Position.InPlace(Places.Find(book, place)) with { Holder = with }
            : with is { } holder ? Position.With(holder)
            : Position.Unknown;
        var owner = sheets.Owner is { } named ? Owner.Known(Persons.Find(book, named))
            : found.Makers.FirstOrDefault() is { } maker ? Owner.Known(maker.Id)
            : Owner.Unknown;
        ReadRow row = new() { Line = 0, TitleState = found.TitleState, Paper = sheets.Paper, Signed = sheets.Signed, Notes = sheets.Note };
        var run = ListedSheets.Run(row, work, found.Runs.Select(known => known.Ordinal).DefaultIfEmpty().Max() + 1, deed);
        var draw = CodeDrawing.From(writing);
        List<string> codes = [];

        foreach (var ordinal in part.Ordinals)
        {
            var code = draw();
            ListedSheets.Sheet(row, new NewSheet(run, codes.Count + 1, code, "kept"), position, owner, (numbering, ordinal), writing.Read.OwnWords, deed);
            codes.Add(code.ToString());
        }

        return codes;
    });
}

/// <summary>What is said alike of sheets of an old edition.</summary>
public sealed record KnownSheets
{
    /// <summary>The maker when not said.</summary>
    public string? Owner { get; init; }

    public string? Paper { get; init; }

    /// <summary>yes, no or unknown.</summary>
    public string Signed { get; init; } = "unknown";

    public string? Note { get; init; }
}
