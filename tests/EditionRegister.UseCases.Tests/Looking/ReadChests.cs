using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

internal static class ReadChests
{
    /// <summary>The plan chest of a register, open and read whole.</summary>
    public static PlanChest ReadChest(this Register register)
    {
        var chest = register.PlanChest;
        chest.Open();
        chest.ReadSheets();

        return chest;
    }
}
