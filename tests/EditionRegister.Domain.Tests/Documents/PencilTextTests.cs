using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Documents;

// Number left, title in the middle, signature right, in pencil under the image: common practice, no source.
public class PencilTextTests
{
    private static readonly Work Clean = Harbour.Clean();

    [Fact]
    public void What_is_to_be_written_on_a_sheet()
    {
        var work = Clean.WithSheet("4/12", sheet => sheet with { Pencilled = null, Titled = null });

        Assert.Equal(new PencilText("4/12", "Harbour", "Mara Quill"), PencilText.For(work, work.The("4/12")));
    }

    [Fact]
    public void What_stands_there_already_stays()
    {
        var work = Clean.WithSheet("4/12", sheet => sheet with { Pencilled = "4 / 12", Titled = "Harbor", Signature = "M Q" });

        Assert.Equal(new PencilText("4 / 12", "Harbor", "M Q"), PencilText.For(work, work.The("4/12")));
    }

    [Fact]
    public void Nothing_to_write_is_empty()
    {
        var work = Clean with { Title = null, TitleState = "unknown", Roles = [] };

        Assert.Equal(new PencilText("", "", ""), PencilText.For(work, work.The("left out")));
        Assert.Equal("Untitled", PencilText.For(work with { TitleState = "untitled" }, work.The("left out")).Title);
    }
}
