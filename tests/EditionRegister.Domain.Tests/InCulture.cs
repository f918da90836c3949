using System.Globalization;

namespace EditionRegister.Domain.Tests;

/// <summary>
/// Runs every test of a class under one culture. Derive the class once more for each culture it must not depend on:
/// German writes 1,5 for 1.5, and Turkish has two letters i.
/// </summary>
public abstract class InCulture : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    protected InCulture(string culture)
    {
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture;
    }

    public void Dispose()
    {
        CultureInfo.CurrentCulture = _before;
        CultureInfo.CurrentUICulture = _before;
        GC.SuppressFinalize(this);
    }
}
