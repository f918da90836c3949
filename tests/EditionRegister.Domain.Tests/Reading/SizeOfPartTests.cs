using EditionRegister.Domain.Reading.Sizes;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>One field holds one size: of the part it is for, or of nothing that is named.</summary>
public sealed class SizeOfPartTests
{
    [Theory]
    [InlineData("310 x 220", 310_000, 220_000)]
    [InlineData("31 x 22 cm", 310_000, 220_000)]
    [InlineData("image: 310 x 220 mm", 310_000, 220_000)]
    [InlineData("sheet: 390 x 310 mm; image: 310 x 220 mm", 310_000, 220_000)]
    [InlineData("image: 310 x 220 mm ⏎ image: 310 x 220 mm", 310_000, 220_000)]
    [InlineData("image/sheet: 310 x 220", 310_000, 220_000)]
    public void The_image_is_taken_where_it_is_named_or_stands_alone(string text, long height, long width)
    {
        var size = SizeReader.SizeOf(text, SizePart.Image);

        Assert.Equal((height, width), (size.Size!.Height.Micrometres, size.Size.Width.Micrometres));
        Assert.Null(size.WhyNot);
    }

    [Theory]
    [InlineData("", "It gives no size. Write 310 x 220 (height x width in millimetres).")]
    [InlineData("310", "It gives one length only. Write 310 x 220 (height x width in millimetres).")]
    [InlineData("plate: 310 x 220 mm", "It gives the size of “plate”, not of the image. Write image: before the size that is meant.")]
    [InlineData("book: 310 x 220 mm", "It gives the size of “book”, not of the image. Write image: before the size that is meant.")]
    [InlineData("310 x 220 mm; 390 x 310 mm", "It gives several sizes, none of them named for the image. Write image: before the one that is meant.")]
    [InlineData("image: 310 x 220 mm; image: 390 x 310 mm", "It gives 2 sizes of the image. Write the one that is meant.")]
    [InlineData("30-32 x 20 cm", "“30-32 x 20 cm” was not read as a size: it gives a range. Write the size of one sheet.")]
    [InlineData("310 x 220 mm; 30-32 x 20 cm", "“30-32 x 20 cm” was not read as a size: it gives a range. Write the size of one sheet.")]
    public void What_gives_no_size_of_the_image_says_why(string text, string whyNot)
    {
        var size = SizeReader.SizeOf(text, SizePart.Image);

        Assert.Null(size.Size);
        Assert.Equal(whyNot, size.WhyNot);
        Assert.Equal(whyNot, size.Explain());
    }

    [Fact]
    public void A_support_is_the_sheet()
    {
        var size = SizeReader.SizeOf("image: 176 x 139 mm ⏎ support: 269 x 574 mm", SizePart.Sheet);

        Assert.Equal("support: 269 × 574 mm, height by width", size.Explain());
    }

    [Fact]
    public void Two_systems_that_differ_are_taken_and_told()
    {
        var size = SizeReader.SizeOf("310 x 220 mm (14 x 9 in.)", SizePart.Image);

        Assert.Equal(310_000, size.Size!.Height.Micrometres);
        Assert.Equal(Agreement.Differ, size.Read!.Agreement);
    }
}
