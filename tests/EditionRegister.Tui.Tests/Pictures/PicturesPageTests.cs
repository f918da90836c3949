using EditionRegister.Tui.Pictures;
using EditionRegister.Tui.Tests.PlanChest;

namespace EditionRegister.Tui.Tests.Pictures;

/// <summary>Pictures of the demo's “Harbour at Low Water”, added by hand from a folder beside the register.</summary>
public sealed class PicturesPageTests
{
    [Fact]
    public async Task A_sheets_pictures_are_added_listed_taken_off_and_brought_back()
    {
        await using var house = await OpenAsync();
        await house.PressAsync("o", "p");
        var page = Assert.IsType<PicturesPage>(house.House.Page);
        Assert.Equal("There is no picture yet. Press n to add one: a JPEG, PNG or WebP from camera, phone or scanner.", page.Empty);

        await house.PressAsync("n");
        await house.FillAsync(("File", Png(house, "front.png")), ("Stands for the edition", "yes"), ("Caption", "the front, in daylight"), ("Taken by", "Joost"), ("Taken", "2026-03"));

        Assert.Equal("1 picture added: 1.", house.Message);
        ApprovedScreen.Is(house.Screen(), "sheet-80", "Pictures");
        ApprovedScreen.Is(house.Screen(120, 35), "sheet-120", "Pictures");

        await house.PressAsync("t");
        Assert.Equal("Picture 1 of “Harbour at Low Water” taken off; its row and its file stay.", house.Message);
        Assert.Equal(0, page.Rows.Count);
        await house.PressAsync("v", "t");
        Assert.Equal("Picture 1 of “Harbour at Low Water” is shown again.", house.Message);
        Assert.Equal(1, page.Rows.Count);
        Assert.Empty(house.Bugs);
    }

    [Fact]
    public async Task What_was_added_is_undone_by_taking_it_off()
    {
        await using var house = await OpenAsync();
        await house.PressAsync("o", "p", "n");
        await house.FillAsync(("File", Png(house, "front.png")));

        await house.PressAsync("u");

        Assert.Equal("taken-off", Assert.Single(house.Register.ListPictures.Run(all: true)).Picture.Standing);
    }

    [Fact]
    public async Task A_file_that_is_no_picture_is_said_in_the_form_and_nothing_is_kept()
    {
        await using var house = await OpenAsync();
        await house.PressAsync("o", "p", "n");
        var letter = Path.Combine(house.Register.Folder.FullPath, "..", "letter.jpg");
        File.WriteAllText(letter, "Dear Mira,");

        await house.FillAsync(("File", letter));

        Assert.Equal("letter.jpg is no JPEG, PNG or WebP by its bytes, whatever it is called. Nothing was changed. Save the picture as one of these and add that.", house.Form.Problem);
        Assert.False(Directory.Exists(Path.Combine(house.Register.Folder.FullPath, "images")));
    }

    [Fact]
    public async Task An_editions_pictures_are_those_that_stand_for_it_and_copies_are_written_to_show()
    {
        await using var house = await OpenAsync();
        await house.PressAsync("Esc", "+", "p", "n");
        await house.FillAsync(("File", Png(house, "edition.png")));
        var site = Path.Combine(house.Register.Folder.FullPath, "..", "site");

        await house.PressAsync("w");
        await house.FillAsync(("Folder", site), ("Longest side", "20"));

        Assert.StartsWith("1 picture written for others to see. ", house.Message, StringComparison.Ordinal);
        Assert.Equal("edition-1-picture-1.jpg", Path.GetFileName(Assert.Single(Directory.GetFiles(site))));
    }

    [Fact]
    public async Task A_file_that_is_gone_is_said_in_its_line()
    {
        await using var house = await OpenAsync();
        await house.PressAsync("o", "p", "n");
        await house.FillAsync(("File", Png(house, "front.png")));
        File.Delete(house.Register.ListPictures.Run()[0].Path);

        await house.House.Page.RefreshAsync();

        Assert.Contains("missing", house.Screen(), StringComparison.Ordinal);
    }

    /// <summary>With the sheet under the first number open.</summary>
    private static async Task<TestHouse> OpenAsync()
    {
        var house = await TestHouse.OnDemoAsync();
        await house.OpenAsync(1);
        await house.PressAsync("Enter");

        return house;
    }

    private static string Png(TestHouse house, string name)
    {
        var path = Path.GetFullPath(Path.Combine(house.Register.Folder.FullPath, "..", name));
        File.WriteAllBytes(path, PlainPng.Of(40, 30, 128));

        return path;
    }
}
