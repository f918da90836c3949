using EditionRegister.Tui.Logbook;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases;

namespace EditionRegister.Tui.Tests.Logbook;

/// <summary>The logbook's room, waited for until all that is in sight is read and its hashes are recomputed.</summary>
internal static class InLogbook
{
    extension(TestHouse house)
    {
        public async Task EnterLogbookAsync()
        {
            await house.PressAsync("3");
            await house.SettleAsync();
            house.House.BodyHeight = PagePicture.Of(house.House.Page, 80, 19).BodyHeight;
        }

        /// <summary>Reads in two sheets of a work from a list, which is a batch of three entries.</summary>
        public void ReadInList()
        {
            var file = Path.Combine(house.Register.Folder.FullPath, "list.csv");
            File.WriteAllText(file, "Artist,Title,Number,Edition size\r\nMira Tolland,Harbour,1/3,3\r\nMira Tolland,Harbour,2/3,3\r\n");
            house.Register.ReadIn.Run(file, []);
        }

        /// <summary>Drawing asks for what is not read yet, and what is read then may ask for what follows.</summary>
        public async Task SettleAsync(int width = 80, int height = 19)
        {
            var page = Assert.IsType<LogbookPage>(house.House.Page);

            for (var time = 0; time < 4; time++)
            {
                house.Screen(width, height);
                await page.Underway;
            }
        }

        /// <summary>Presses keys in the logbook and waits for what they bring into sight.</summary>
        public async Task TurnAsync(params string[] keys)
        {
            await house.PressAsync(keys);
            await house.SettleAsync();
        }

        /// <summary>The same register, written to by somebody who is named.</summary>
        public Register As(long person) => Register.Open(house.Register.Folder, by: person);

        /// <summary>The numbers of the entries on the screen.</summary>
        public IReadOnlyList<long> NumbersInSight(int height = 19) =>
            [.. from line in house.Screen(80, height).Split('\n') let word = line.Length > 10 ? line[1..10].Trim() : "" where long.TryParse(word, out _) select long.Parse(word, System.Globalization.CultureInfo.InvariantCulture)];
    }
}
