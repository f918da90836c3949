using CsCheck;
using EditionRegister.Domain.Reading.Lettering;

namespace EditionRegister.Domain.Tests.Reading.Lettering;

/// <summary>
/// Roles in lettering. The Latin abbreviations with gez. and gedr. as DCRMR, Appendix J, has them (bsc.rbms.info/DCRMR/appendices/Appendix-j); the words
/// spelled out are common practice, no source. All names are invented.
/// </summary>
public class LetteringReaderTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("J. Aldous del.", "drew J. Aldous")]
    [InlineData("P. van Orlick delin.", "drew P. van Orlick")]
    [InlineData("Aldous Senr. inv.", "designed Aldous Senr.")]
    [InlineData("M. Tolland pinxt.", "painted M. Tolland")]
    [InlineData("M. Tolland pinx. J. Wadlow sculp.", "painted M. Tolland; engraved J. Wadlow")]
    [InlineData("Wadlow sc.", "engraved Wadlow")]
    [InlineData("Wadlow sculpsit 1712", "engraved Wadlow")]
    [InlineData("Wadlow fec.", "made Wadlow")]
    [InlineData("Wadlow excudit", "issued Wadlow")]
    [InlineData("Wadlow sculp. et exc.", "engraved Wadlow; issued Wadlow")]
    [InlineData("J. Aldous del. et lith.", "drew J. Aldous; lithographed J. Aldous")]
    [InlineData("Aldous del | Wadlow sc", "drew Aldous; engraved Wadlow")]
    [InlineData("Ida Kell, imp.", "printed Ida Kell")]
    [InlineData("Ida Kell '26 imp", "printed Ida Kell")]
    [InlineData("Ida Kell (imp) 1957", "printed Ida Kell")]
    [InlineData("Imp. Kell & Cie, Paris", "printed Kell & Cie")]
    [InlineData("Imp. d'Ostby", "printed d'Ostby")]
    [InlineData("Tolland / Imp. Kell. Rue Haute", "printed Kell")]
    [InlineData("Lith. de Kell frères", "lithographed Kell frères")]
    [InlineData("gez. v. H. Ostby, gest. von K. Marren", "drew H. Ostby; engraved K. Marren")]
    [InlineData("gedr. bei Marren", "printed Marren")]
    [InlineData("Drawn by E. W. Kell and engraved by Tom Wadlow", "drew E. W. Kell; engraved Tom Wadlow")]
    [InlineData("dessiné par Ostby, gravé par Marren", "drew Ostby; engraved Marren")]
    [InlineData("Printed by Kell Brothers; published by Marren & Co.", "printed Kell Brothers; published Marren & Co.")]
    [InlineData("Entwurf: H. Ostby Druck: Marren AG", "designed H. Ostby; printed Marren AG")]
    [InlineData("C.P.S.C.M. Johann Ostby direxit.", "directed Johann Ostby")]
    [InlineData("Del, sc. et imp", "drew ; engraved ; printed ")]
    [InlineData("imp.", "printed ")]
    [InlineData("printed by the artist", "printed ")]
    public void Roles_are_read_with_the_names_beside_them(string text, string roles)
    {
        Assert.Equal(roles, string.Join("; ", LetteringReader.Read(text).Select(one => $"{one.Role} {one.Name}")));
    }

    [Theory]
    [InlineData("30 imp.")]
    [InlineData("Harbour 16 imp.")]
    [InlineData("imp. IV")]
    [InlineData("#4885 Silk Imp.")]
    [InlineData("Imp Grenat")]
    [InlineData("C.P.R. à Paris")]
    [InlineData("Avec privilège du Roy")]
    [InlineData("La linea del mar")]
    [InlineData("inv. no. 1924.3")]
    [InlineData("SC 18/25")]
    [InlineData("gest. 1880")]
    [InlineData("Marren Inc.")]
    [InlineData("3/12 Harbour")]
    [InlineData("")]
    [InlineData(null)]
    public void Counts_privileges_inventories_and_common_words_are_no_roles(string? text)
    {
        Assert.Empty(LetteringReader.Read(text));
    }

    [Fact]
    public void The_span_holds_the_role_and_its_name()
    {
        const string Text = "lower right: Wadlow sculp. et exc. rue Haute";

        Assert.Equal(["Wadlow sculp.", "Wadlow sculp. et exc."], LetteringReader.Read(Text).Select(one => Text[one.Span]));
    }

    [Fact]
    public void Roles_have_words_of_their_own()
    {
        Assert.Equal(["drew", "designed", "painted", "engraved", "etched", "aquatinted", "made", "lithographed", "issued", "published", "printed", "directed"], LetteringRole.All.Select(role => role.Word));
    }

    [Fact]
    public void Any_text_is_read_without_a_fault_and_names_stand_in_it()
    {
        string[] parts = ["del. ", "et ", "sc. ", "imp. ", "Imp. ", "A. ", "Kell ", "von ", "& ", "printed by ", "'65 ", "3 ", "/ ", ", ", "(", ")", "-", "\uD800", "\0", "e\u0301", "C.P.R. "];
        var words = Gen.Int[0, parts.Length - 1].Select(at => parts[at]).Array[0, 14].Select(string.Concat);

        Gen.OneOf(words, Gen.String).Sample(text => LetteringReader.Read(text).All(one => text[one.Span].Contains(one.Name, StringComparison.Ordinal) && text[one.Span].Length > 0), iter: 10_000);
    }
}

public sealed class LetteringReaderInTurkishTests() : LetteringReaderTests("tr-TR");
