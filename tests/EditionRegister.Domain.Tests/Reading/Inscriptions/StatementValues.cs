using System.Globalization;
using EditionRegister.Domain.Reading.Inscriptions;

namespace EditionRegister.Domain.Tests.Reading.Inscriptions;

/// <summary>Every typed value of a statement in one line, without where it was read.</summary>
internal static class StatementValues
{
    public static string Of(EditionStatement read) => string.Create(
        CultureInfo.InvariantCulture,
        $"{read.Kind} {read.Series} number {read.Number} {read.Letter} doubted {read.NumberIsDoubted} roman {read.NumberIsRoman} of {read.Of} {read.Hedge} {read.Bounds} state {read.State} of {read.StateOf} roman {read.StateIsRoman} beside {string.Join(", ", read.Beside)}");
}
