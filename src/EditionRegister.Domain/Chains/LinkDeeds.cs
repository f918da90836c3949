using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Domain.Chains;

/// <summary>Taking back the last link of a chain that was recorded by mistake. The logbook keeps both entries.</summary>
public static class LinkDeeds
{
    /// <exception cref="RefusedException">first-link-stays.</exception>
    public static void TakeBackMove(Impression sheet, Deed deed)
    {
        if (sheet.Whereabouts is not [_, .., var last])
        {
            throw ChainRefusals.FirstLinkStays(sheet);
        }

        deed.Unset("whereabouts", last.Id);
    }

    /// <exception cref="RefusedException">first-link-stays.</exception>
    public static void TakeBackTransfer(Impression sheet, Deed deed)
    {
        if (sheet.Ownership is not [_, .., var last])
        {
            throw ChainRefusals.FirstLinkStays(sheet);
        }

        deed.Unset("ownership", last.Id);
    }
}
