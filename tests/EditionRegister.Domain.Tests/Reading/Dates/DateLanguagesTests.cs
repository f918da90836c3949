using EditionRegister.Domain.Reading.Dates;

namespace EditionRegister.Domain.Tests.Reading.Dates;

/// <summary>Dates as French, German, Italian and Spanish catalogues write them. Common practice, no source.</summary>
public class DateLanguagesTests(string culture = "") : InCulture(culture)
{
    [Theory]
    [InlineData("circa 1926")]
    [InlineData("vers 1926")]
    [InlineData("vers l'année 1926")]
    [InlineData("environ 1926")]
    [InlineData("um 1926")]
    [InlineData("UM DAS JAHR 1926")]
    [InlineData("etwa 1926")]
    [InlineData("verso il 1926")]
    [InlineData("intorno al 1926")]
    [InlineData("hacia 1926")]
    [InlineData("alrededor de 1926")]
    public void About_is_about_in_five_languages(string text)
    {
        var read = DateReader.Read(text)!;

        Assert.Equal(("1926~", 1921, 1931), (read.Edtf, read.Earliest, read.Latest));
    }

    [Theory]
    [InlineData("XIXe siècle", "18XX")]
    [InlineData("XIX secolo", "18XX")]
    [InlineData("sec. XIX", "18XX")]
    [InlineData("siglo XIX", "18XX")]
    [InlineData("19. Jahrhundert", "18XX")]
    [InlineData("19. Jh.", "18XX")]
    [InlineData("Ottocento", "18XX")]
    [InlineData("IIIe siècle av. J.-C.", "-0299/-0200")]
    [InlineData("3. Jh. v. Chr.", "-0299/-0200")]
    [InlineData("début du XXe siècle", "1900~/1950~")]
    [InlineData("milieu du XVIIIe siècle", "1725~/1775~")]
    [InlineData("fin XIXe", null)]
    [InlineData("fin du XIXe siècle", "1850~/1899~")]
    [InlineData("1re moitié du XIXe siècle", "1800~/1850~")]
    [InlineData("Anfang 19. Jh.", "1800~/1850~")]
    [InlineData("Mitte des 19. Jahrhunderts", "1825~/1875~")]
    [InlineData("Ende 18. Jahrhundert", "1750~/1799~")]
    [InlineData("1. Hälfte 19. Jh.", "1800~/1850~")]
    [InlineData("letztes Viertel des 19. Jahrhunderts", "1875~/1899~")]
    [InlineData("inizio XX secolo", "1900~/1950~")]
    [InlineData("metà del XIX secolo", "1825~/1875~")]
    [InlineData("prima metà del XIX secolo", "1800~/1850~")]
    [InlineData("fine XIX secolo", "1850~/1899~")]
    [InlineData("principios del siglo XX", "1900~/1950~")]
    [InlineData("mediados del siglo XIX", "1825~/1875~")]
    [InlineData("finales del siglo XVIII", "1750~/1799~")]
    [InlineData("segunda mitad del siglo XIX", "1850~/1899~")]
    public void Centuries_and_their_parts(string text, string? edtf)
    {
        Assert.Equal(edtf, DateReader.Read(text)?.Edtf);
    }

    [Theory]
    [InlineData("années 1920", "192X")]
    [InlineData("début des années 1920", "1920~/1925~")]
    [InlineData("années 1920-1930", "1920/1939")]
    [InlineData("1920er Jahre", "192X")]
    [InlineData("Ende der 1920er Jahre", "1925~/1929~")]
    [InlineData("anni '20", "192X?")]
    [InlineData("años 1920", "192X")]
    public void Decades(string text, string edtf)
    {
        Assert.Equal(edtf, DateReader.Read(text)?.Edtf);
    }

    [Theory]
    [InlineData("1er mars 2026", "2026-03-01")]
    [InlineData("le 3 février 1926", "1926-02-03")]
    [InlineData("3. März 1926", "1926-03-03")]
    [InlineData("3 de marzo de 1926", "1926-03-03")]
    [InlineData("1 gennaio 1926", "1926-01-01")]
    [InlineData("Août 1926", "1926-08")]
    [InlineData("Dez. 1926", "1926-12")]
    [InlineData("été 1926", "1926-22")]
    [InlineData("Herbst 1926", "1926-23")]
    [InlineData("primavera 2024", "2024-21")]
    [InlineData("otoño de 1926", "1926-23")]
    public void Days_months_and_seasons(string text, string edtf)
    {
        Assert.Equal(edtf, DateReader.Read(text)?.Edtf);
    }

    [Theory]
    [InlineData("avant 1926", "../1926")]
    [InlineData("vor 1926", "../1926")]
    [InlineData("prima del 1926", "../1926")]
    [InlineData("antes de 1926", "../1926")]
    [InlineData("après 1926", "1926/..")]
    [InlineData("nicht vor 1926", "1926/..")]
    [InlineData("dopo il 1926", "1926/..")]
    [InlineData("después de 1926", "1926/..")]
    [InlineData("entre 1920 et 1925", "1920/1925")]
    [InlineData("zwischen 1920 und 1925", "1920/1925")]
    [InlineData("tra il 1920 e il 1925", "1920/1925")]
    [InlineData("von 1920 bis 1925", "1920/1925")]
    [InlineData("de 1920 à 1925", "1920/1925")]
    [InlineData("dal 1920 al 1925", "1920/1925")]
    [InlineData("desde 1920 hasta 1925", "1920/1925")]
    public void Bounds_and_spans(string text, string edtf)
    {
        Assert.Equal(edtf, DateReader.Read(text)?.Edtf);
    }

    [Theory]
    [InlineData("gravé en 1926, tiré en 1930", "engraved 1926; printed 1930")]
    [InlineData("1926, tirage posthume", "1926; printed posthumously")]
    [InlineData("1926, Abzug später", "1926; printed later")]
    [InlineData("Entwurf 1926, gedruckt 1930", "designed 1926; printed 1930")]
    [InlineData("1763, d'après un dessin de 1732", "1763; drawing 1732")]
    [InlineData("nach einer Zeichnung von 1732", "no date of its own; drawing 1732")]
    public void What_happened_is_told_in_English(string text, string words)
    {
        Assert.Equal(words, ReadDateInWords.Of(DateReader.Read(text)!, text));
    }
}

public sealed class DateLanguagesInTurkishTests() : DateLanguagesTests("tr-TR");
