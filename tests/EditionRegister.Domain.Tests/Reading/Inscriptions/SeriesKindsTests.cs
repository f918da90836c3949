using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Domain.Tests.Reading.Inscriptions;

/// <summary>
/// The words for the kinds of proof in five languages. A/P, H.C. and B.A.T. as DCRMR, Appendix J, has them (bsc.rbms.info/DCRMR/appendices/Appendix-j),
/// the other marks after workshop glossaries; the words spelled out in other languages than English are common practice, no source.
/// </summary>
public sealed class SeriesKindsTests
{
    [Theory]
    [InlineData("numbered", "3/12; edition of 12; Auflage 12; tirage à 12; tiratura di 12; tirada de 12")]
    [InlineData("artists-proof", "A/P; AP; A.P.; a.p.; E.A.; EA; P.d.A.; PdA; P/A; artist's proof; Artists’ Proof; épreuve d'artiste; prova d'artista; prova d'autore; prueba de artista; copia d'artista; Künstlerexemplar; Künstlerabzug; Eigendruck")]
    [InlineData("printers-proof", "P/P; P.P.; printer's proof; épreuve d'imprimeur; prova dello stampatore; prueba de imprenta; prueba del impresor; Druckerexemplar")]
    [InlineData("publishers-proof", "publisher's proof; épreuve d'éditeur; prova dell'editore; prueba del editor; Verlagsexemplar")]
    [InlineData("hors-commerce", "H.C.; HC; F.C.; hors commerce; hors de commerce; fuori commercio; fuera de comercio; außer Handel")]
    [InlineData("bon-a-tirer", "B.A.T.; BAT; R.T.P.; bon à tirer; visto si stampi; bueno para tirar; gut zum Druck")]
    [InlineData("trial", "T/P; TP; trial proof; épreuve d'essai; prova di stampa; prueba de ensayo; Probedruck; Probeabzug; Andruck")]
    [InlineData("state", "state proof; épreuve d'état; prova di stato; prueba de estado; P/E; P.E.; Zustandsdruck")]
    [InlineData("progressive", "progressive proof; épreuve progressive; prova progressiva; prueba progresiva; Skalendruck")]
    [InlineData("colour-trial", "C.T.P.; colour trial proof; color trial proof; épreuve d'essai de couleur; prova di colore; prueba de color; Farbprobedruck")]
    [InlineData("cancellation", "C/P; cancellation proof; épreuve d'annulation; prova di biffatura; prueba de cancelación; Entwertungsdruck")]
    [InlineData("presentation", "presentation proof; épreuve de présentation; prova di presentazione; prueba de presentación; Widmungsexemplar")]
    [InlineData("workshop", "workshop proof; épreuve d'atelier; prova di bottega; prueba de taller; Werkstattexemplar")]
    [InlineData("archive", "archive proof; épreuve d'archives; prova d'archivio; prueba de archivo; Archivexemplar")]
    [InlineData("exchange", "exchange proof; épreuve d'échange; copia di scambio; prueba de intercambio; Tauschexemplar")]
    [InlineData("legal-deposit", "legal deposit; dépôt légal; deposito legale; depósito legal; Pflichtexemplar")]
    public void Every_kind_is_reached_by_its_words_in_five_languages(string kind, string words)
    {
        Assert.All(words.Split("; "), word => Assert.Equal((word, kind), (word, SeriesKinds.KindOf(EditionStatementReader.Read(word).Series)?.Word)));
    }

    [Fact]
    public void No_kind_is_forgotten()
    {
        var reached = NumberingKind.All.Select(kind => kind == NumberingKind.Numbered ? "3/12" : kind.Mark).Select(mark => SeriesKinds.KindOf(EditionStatementReader.Read(mark).Series));

        Assert.Equal(NumberingKind.All, reached);
    }

    [Theory]
    [InlineData("working proof")]
    [InlineData("stage proof 3")]
    [InlineData("proof")]
    [InlineData("second state")]
    [InlineData("nothing at all")]
    public void What_the_register_has_no_kind_for_has_none(string text)
    {
        Assert.Null(SeriesKinds.KindOf(EditionStatementReader.Read(text).Series));
    }

    [Fact]
    public void A_registers_own_kind_is_found_by_its_mark()
    {
        var guild = NumberingKind.Own("guild", "X/P", "guild copy", inSize: false, inTotal: true, forSale: false);
        OwnWords own = new([guild], []);

        Assert.Same(guild, SeriesKinds.KindOf(EditionStatementReader.Read("guild copy 2/5", own).Series, own));
    }
}
