using System.Globalization;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Impressions;

/// <summary>Why there is nothing to sign, or not this.</summary>
public static class SigningRefusals
{
    public static RefusedException NoneLeft(Work work, Edition edition) => Signing.Order(work, edition).Count == 0
        ? new("nothing-to-sign", string.Create(CultureInfo.InvariantCulture, $"No sheet of edition {edition.Id} of “{work.ShownTitle}” has a number yet. Nothing was changed. Give the numbers first with `edreg number {edition.Id}`."))
        : new("nothing-to-sign", string.Create(CultureInfo.InvariantCulture, $"Every numbered sheet of edition {edition.Id} of “{work.ShownTitle}” is signed. Nothing was changed. What was recorded by mistake is corrected with `edreg inscribe`."));

    public static RefusedException SignedAlready(Work work, Impression sheet) =>
        new("signed-already", $"{work.NumberOf(sheet)} of “{work.ShownTitle}” ({sheet.ShownCode}) is on record as signed. Nothing was changed. `edreg sign next` spells the next one; a mistake in the record is corrected with `edreg inscribe`.");
}
