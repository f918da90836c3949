using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Store;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Shows;

namespace EditionRegister.UseCases.Moves;

/// <summary>Sends sheets somewhere for a time: lent, in transit, at a framer's, on approval, exhibited, passed on by the consignee, or waiting to be collected.</summary>
public sealed class SendAway(RegisterStore store)
{
    private static readonly Dictionary<string, string> Deeds = new(StringComparer.Ordinal)
    {
        ["lent"] = "lend",
        ["exhibited"] = "exhibit",
        ["sub-consigned"] = "pass-on",
        ["awaiting-collection"] = "await-collection",
    };

    /// <summary>Answers how many sheets that were.</summary>
    /// <param name="choice">Which sheets.</param>
    /// <param name="to">Who has them then, and where; neither is nobody knows, and for a show or a collection where they are.</param>
    /// <param name="terms">The kind of move and its terms; where to is found from <paramref name="to"/>.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="ChainRefusals"/> or <see cref="MoveRefusals"/>, or somebody or something named is not known.</exception>
    public int Run(ImpressionChoice choice, SentTo to, Going terms) => DeedOnChosen.Run(store, Deeds.GetValueOrDefault(terms.Kind.Word, "send-away"), choice, (writing, chosen, deed) =>
    {
        var sent = terms with { To = Place(writing.Read, to, terms), Moved = terms.Moved.IsKnown ? terms.Moved : Today.Of(store) };

        if (chosen.GoWithCopy)
        {
            // The copy is insured as a whole; what lies in it goes with it.
            sent = sent with { Value = null };
        }

        if (terms.Show is { } show && !terms.Until.IsKnown)
        {
            sent = sent with { Until = writing.Read.ShowOrRefuse(show).Closes };
        }

        sent.Record(chosen.Work, chosen.Sheets, deed);
    });

    private static Position? Place(Reader reader, SentTo to, Going terms)
    {
        long? with = to.With is { } who ? Persons.Find(reader.Book, who) : null;
        long? place = to.Place is { } path ? Places.Find(reader.Book, path) : null;

        if (with is null && place is null && terms.Show is { } id)
        {
            var show = reader.ShowOrRefuse(id);
            (with, place) = (show.Host, show.Place);
        }

        return place is { } put ? Position.InPlace(put) with { Holder = with }
            : with is { } holder ? Position.With(holder)
            : terms.Kind == MoveKind.Exhibited || terms.Kind == MoveKind.AwaitingCollection ? null
            : Position.Unknown;
    }
}

/// <summary>Who has the sheets and where they lie, as a person names them; null is not said.</summary>
public sealed record SentTo(string? With, string? Place = null);
