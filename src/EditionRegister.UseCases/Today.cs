using EditionRegister.Domain.Dates;
using EditionRegister.Store;

namespace EditionRegister.UseCases;

/// <summary>The day it is where the register is kept; what a deed is dated when nothing else is said.</summary>
internal static class Today
{
    public static RecordedDate Of(RegisterStore store) => RecordedDate.On(DateOnly.FromDateTime(store.Time.GetLocalNow().DateTime));
}
