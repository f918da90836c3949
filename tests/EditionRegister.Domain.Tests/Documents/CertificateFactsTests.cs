using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Tests.Integrity;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Documents;

public class CertificateFactsTests(string culture = "") : InCulture(culture)
{
    private readonly Work _clean = Harbour.Clean();

    [Fact]
    public void Everything_a_certificate_states()
    {
        var work = _clean.WithSheet("4/12", sheet => sheet with { Signature = "M. Quill" });

        Assert.Equal(
            [
                "maker: Mara Quill",
                "title: Harbour",
                "matrix-year: January 2026",
                "printed: 1 February to 1 March 2026",
                "technique: reduction linocut",
                "paper: Hosho",
                "image-size: 120 × 90.5 mm (height × width)",
                "sheet-size: 200 × 150 mm (height × width)",
                "number: 4/12",
                "edition: limited to 12 impressions, numbered 1/12 to 12/12",
                "proofs: 2 artist's proofs, A/P I/II to A/P II/II; 1 bon à tirer, B.A.T.; outside the edition",
                "total: 15 impressions in all",
                "state: no state recorded",
                "signature: signed by hand in pencil: M. Quill",
                "matrix-fate: block cut away in printing (20 February 2026); no further impressions can be made",
                "printer: not known",
                "workshop: not known",
                $"code: {work.The("4/12").ShownCode}",
            ],
            CertificateFacts.Of(work, work.The("4/12"), SizeStyle.Millimetres).Select(fact => $"{fact.Key}: {fact.Value}"));
    }

    // 120 mm = 4.724 in and 90.5 mm = 3.563 in, to the nearest sixteenth: computed by hand.
    [Fact]
    public void Sizes_in_inches()
    {
        Assert.Equal("4 3/4 × 3 9/16 in (height × width)", Fact(_clean, "image-size", SizeStyle.Inches));
    }

    // 120 mm and 90.5 mm again: up to whole centimetres and quarters of an inch.
    [Fact]
    public void Sizes_as_a_library_catalogues_them()
    {
        SizeStyle library = new(SizeWriting.Lc, "mm");

        Assert.Equal("12 × 10 cm (4 3/4 × 3 3/4 in.), height × width", Fact(_clean, "image-size", library));
        Assert.Equal("height 12 cm (4 3/4 in.), width not known", Fact(_clean.WithRun(run => run with { ImageWidth = null }), "image-size", library));
    }

    [Fact]
    public void What_is_not_known_is_said()
    {
        var work = _clean with { Title = null, TitleState = "unknown", Technique = " ", Roles = [], Matrices = [], Runs = [], Editions = [_clean.Editions[0] with { Kind = "unknown", Extent = "someone-elses", Numberings = [new(21, 1, 1, "numbered", "arabic", null, "unknown", [])] }] };

        var facts = CertificateFacts.Of(work, work.Impressions[0] with { Signed = "unknown", Pencilled = null }, SizeStyle.Millimetres).Where(fact => fact.Key is not ("number" or "code" or "state"));

        Assert.All(facts, fact => Assert.Equal((fact.Key, "not known"), (fact.Key, fact.Value)));
        Assert.Equal(15, facts.Count());
    }

    [Theory]
    [InlineData("open", "open, not limited in number, numbered 1/12 to 12/12")]
    [InlineData("varied", "varied edition of 12 impressions, numbered 1/12 to 12/12")]
    [InlineData("unknown", "12 impressions, whether limited is not known, numbered 1/12 to 12/12")]
    public void Other_kinds_of_edition(string kind, string words)
    {
        Assert.Equal(words, Fact(_clean.WithEdition(edition => edition with { Kind = kind }), "edition"));
    }

    [Fact]
    public void Two_numberings_and_numbers_without_a_sheet()
    {
        var work = _clean
            .WithEdition(edition => edition with { Numberings = [.. edition.Numberings, Harbour.Numbers(24, 4, "numbered", "roman", 10), Harbour.Numbers(25, 5, "trial", "arabic", 2)] })
            .WithNumber("numbered", 11, "never-printed").WithNumber("numbered", 12, "void");

        Assert.Equal("limited to 22 impressions, numbered 1/12 to 12/12 and I/X to X/X; 11/12 was never printed; 12/12 is void", Fact(work, "edition"));
        Assert.Equal("24 impressions in all, as 1 of 25 numbers was never printed, not counting 2 trial proofs", Fact(work, "total"));
    }

    [Fact]
    public void An_edition_without_proofs_says_so()
    {
        var work = _clean.WithEdition(edition => edition with { Numberings = [edition.Numberings[0]] });

        Assert.Equal("none", Fact(work, "proofs"));
        Assert.Equal("not known", Fact(work.WithEdition(edition => edition with { Extent = "partly-known" }), "proofs"));
    }

    [Theory]
    [InlineData("plate", "undecided", null, "plate not yet cancelled")]
    [InlineData("plate", "cancelled", "2026-04-01", "plate cancelled (1 April 2026)")]
    [InlineData("stone", "regrained-or-reclaimed", null, "stone regrained; no further impressions can be made")]
    [InlineData("other", "kept-uncancelled", null, "matrix kept uncancelled")]
    [InlineData("block", "unknown", "2026", "block of which it is not known what became")]
    public void What_became_of_the_matrix(string what, string fate, string? date, string words)
    {
        Assert.Equal(words, Fact(_clean.WithMatrix(matrix => matrix with { What = what, Fate = fate, FateDate = RecordedDate.Read(date) }), "matrix-fate"));
    }

    [Fact]
    public void Several_matrices()
    {
        var block = _clean.Matrices[0];
        var work = _clean with { Matrices = [block with { Fate = "cancelled", FateDate = RecordedDate.None }, block with { Id = 6, Fate = "cancelled", FateDate = RecordedDate.None, Made = RecordedDate.None }, block with { Id = 8, What = "stencil", Fate = "undecided" }] };

        Assert.Equal("2 blocks cancelled; stencil not yet cancelled", Fact(work, "matrix-fate"));
        Assert.Equal("January 2026, not known", Fact(work, "matrix-year"));
    }

    [Fact]
    public void A_protected_maker_is_named_by_policy_and_the_signature_is_not_spelled_out()
    {
        var pupil = Harbour.A(Harbour.Maker, "Lena Ostrander", "Ostrander, Lena") with { Protected = "yes", Policy = "given-and-initial" };
        var work = _clean.WithSheet("4/12", sheet => sheet with { Signature = "Lena Ostrander" }) with
        {
            Roles = [new(1, Harbour.Maker, "maker", 1), new(2, Harbour.Maker, "printer", 1)],
            Book = new AddressBook(new Dictionary<long, Person> { [Harbour.Maker] = pupil }, new Dictionary<long, Place>()),
        };

        Assert.Equal("Lena O.", Fact(work, "maker"));
        Assert.Equal("Lena O.", Fact(work, "printer"));
        Assert.DoesNotContain(CertificateFacts.Of(work, work.The("4/12"), SizeStyle.Millimetres), fact => fact.Value.Contains("Ostrander", StringComparison.Ordinal));
    }

    [Fact]
    public void A_number_not_yet_on_the_sheet_is_said_to_be_so()
    {
        Assert.Equal("4/12, not yet pencilled", Fact(_clean.WithSheet("4/12", sheet => sheet with { Pencilled = null }), "number"));
        Assert.Equal("not signed", Fact(_clean.WithSheet("4/12", sheet => sheet with { Signed = "no" }), "signature"));
    }

    private static string Fact(Work work, string key, SizeStyle? sizes = null) => CertificateFacts.Of(work, work.The("4/12"), sizes ?? SizeStyle.Millimetres).Single(fact => fact.Key == key).Value;
}

public sealed class CertificateFactsInGermanTests() : CertificateFactsTests("de-DE");

public sealed class CertificateFactsInTurkishTests() : CertificateFactsTests("tr-TR");
