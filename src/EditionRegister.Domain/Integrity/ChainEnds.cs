using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Integrity;

/// <summary>Places and people in the chains of a sheet that are not named, or that the register does not have.</summary>
internal static class ChainEnds
{
    public static IEnumerable<string> Of(Work work, Impression sheet) =>
        sheet.Whereabouts.SelectMany(link => Ends(work, link.To)).Concat(sheet.Ownership.SelectMany(link => Ends(work, link)));

    private static IEnumerable<string> Ends(Work work, Position to)
    {
        if (to.State == "placed" && to.Place is null)
        {
            yield return "was put in a place that is not named";
        }
        else if (to.Place is { } place && !work.Book.Places.ContainsKey(place))
        {
            yield return $"was put in place {InWords.Figure(place)}, which the register does not have";
        }

        if (to.State == "with" && to.Holder is null)
        {
            yield return "is with somebody who is not named";
        }
        else if (to.Holder is { } holder && work.Book.Person(holder) is null)
        {
            yield return $"is with person {InWords.Figure(holder)}, whom the register does not have";
        }
    }

    private static IEnumerable<string> Ends(Work work, OwnershipLink link)
    {
        if (link.To is { State: "known", Person: null })
        {
            yield return "belongs to somebody who is not named";
        }
        else if (link.To.Person is { } owner && work.Book.Person(owner) is null)
        {
            yield return $"belongs to person {InWords.Figure(owner)}, whom the register does not have";
        }

        if (link.Agent is { } agent && work.Book.Person(agent) is null)
        {
            yield return $"was transferred by person {InWords.Figure(agent)}, whom the register does not have";
        }
    }
}
