using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Documents;

public class LabelComposerTests(string culture = "") : InCulture(culture)
{
    private readonly Work _clean = Harbour.Clean();

    [Fact]
    public void What_a_label_says()
    {
        var label = LabelComposer.Of(_clean, _clean.The("A/P II/II"), "https://example.org/x", SizeStyle.Millimetres);

        Assert.Equal(["A/P II/II Harbour", "Mara Quill", "reduction linocut, 2026", "120 × 90.5 mm"], label.Lines);
        Assert.Equal((_clean.The("A/P II/II").ShownCode, "https://example.org/x"), (label.Code, label.Link));
    }

    [Fact]
    public void The_number_is_the_one_on_the_sheet_else_the_one_given_else_the_standing()
    {
        Assert.Equal("4/15 Harbour", First(_clean.WithSheet("4/12", sheet => sheet with { Pencilled = " 4/15 " }), "4/12"));
        Assert.Equal("4/12 Harbour", First(_clean.WithSheet("4/12", sheet => sheet with { Pencilled = " " }), "4/12"));
        Assert.Equal("left out Harbour", First(_clean, "left out"));
    }

    [Fact]
    public void What_is_not_known_takes_no_line()
    {
        var work = (_clean with { Title = null, TitleState = "unknown", Technique = null, Year = RecordedDate.None, Roles = [] }).WithRun(run => run with { ImageHeight = null });

        Assert.Equal(["4/12 [unknown]", "sheet 200 × 150 mm"], LabelComposer.Of(work, work.The("4/12"), null, SizeStyle.Millimetres).Lines);
    }

    [Fact]
    public void Sizes_are_written_as_the_register_has_them()
    {
        Assert.Contains("12 × 9.05 cm (4 3/4 × 3 1/2 inches)", LabelComposer.Of(_clean, _clean.The("4/12"), null, new SizeStyle(SizeWriting.Cco, "mm")).Lines);
        Assert.Contains("4 3/4 × 3 9/16 in", LabelComposer.Of(_clean, _clean.The("4/12"), null, SizeStyle.Inches).Lines);
    }

    [Fact]
    public void A_protected_maker_is_named_by_policy()
    {
        var pupil = Harbour.A(Harbour.Maker, "Lena Ostrander", "Ostrander, Lena") with { Protected = "yes", Policy = "class-code", ClassCode = "7b-14" };
        var work = _clean with { Book = new AddressBook(new Dictionary<long, Person> { [Harbour.Maker] = pupil }, new Dictionary<long, Place>()) };

        Assert.Equal("7b-14", LabelComposer.Of(work, work.The("4/12"), null, SizeStyle.Millimetres).Lines[1]);
    }

    private static string First(Work work, string number) => LabelComposer.Of(work, work.The(number), null, SizeStyle.Millimetres).Lines[0];
}

public sealed class LabelComposerInGermanTests() : LabelComposerTests("de-DE");

public sealed class LabelComposerInTurkishTests() : LabelComposerTests("tr-TR");
