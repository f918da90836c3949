using System.Globalization;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Shows;

/// <summary>Why a show, or a sheet on its list, cannot be recorded so.</summary>
public static class ShowRefusals
{
    public static RefusedException NoName() =>
        new("show-name-missing", "A show needs a name. Nothing was changed. Give the name as it is announced, as in “Open studio 2026”.");

    public static RefusedException UnknownKind(string kind) =>
        new("show-kind-unknown", $"“{kind}” is no kind of show. Nothing was changed. The kinds are {string.Join(", ", ShowKind.Words)}.");

    public static RefusedException DatesCrossed(RecordedDate opens, RecordedDate closes) =>
        new("show-dates-crossed", $"A show that opens {opens} cannot close {closes}, which is before. Nothing was changed. Correct --opens or --closes.");

    public static RefusedException NoSuchShow(long id) =>
        new("show-not-found", string.Create(CultureInfo.InvariantCulture, $"There is no show {id} in this register. Nothing was changed. `edreg shows list` shows the shows with their numbers."));

    public static RefusedException ListedAlready(Show show, Impression sheet) =>
        new("show-lists-already", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} is listed in “{show.ShownName}” already. Nothing was changed. `edreg shows see {show.Id}` shows the list; name only what is not on it."));

    public static RefusedException LeftOut(Show show, Impression sheet) =>
        new("show-sheet-left-out", $"{sheet.ShownCode} is left out, so it is not listed in “{show.ShownName}”. Nothing was changed. Name another sheet, or sort this one anew with `edreg sort` if it was left out by mistake.");

    public static RefusedException NotListed(Show show, Impression sheet) =>
        new("show-does-not-list", string.Create(CultureInfo.InvariantCulture, $"{sheet.ShownCode} is not listed in “{show.ShownName}”. Nothing was changed. `edreg shows see {show.Id}` shows what is."));
}
