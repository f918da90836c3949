using EditionRegister.Tui.Findings;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.Tui.Tests.Findings;

/// <summary>The room of findings, waited for until the register is checked.</summary>
internal static class InFindings
{
    extension(TestHouse house)
    {
        public async Task EnterFindingsAsync()
        {
            await house.PressAsync("4");
            await house.CheckedAsync();
        }

        public Task CheckedAsync() => Assert.IsType<FindingsPage>(house.House.Page).Underway;

        /// <summary>Leaves and comes back, as after work in another room.</summary>
        public async Task ReturnAsync()
        {
            await house.PressAsync("7");
            await house.EnterFindingsAsync();
        }

        public IEnumerable<string> Keys => house.House.Page.Keys.Select(key => key.Key);
    }

    /// <summary>The demo, broken in one way for each rule.</summary>
    public static async Task<TestHouse> OnFaultyAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        MakeDemo.MakeFaulty(house.Register);

        return house;
    }

    /// <summary>The demo with the title of its reduction print put otherwise by a deed, which its certificates do not agree with.</summary>
    public static async Task<TestHouse> OnRetitledAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        house.Register.EditWork.Run(1, "Harbor", null, null);

        return house;
    }
}
