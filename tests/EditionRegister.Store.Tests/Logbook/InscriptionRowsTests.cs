using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Store.Tests.Logbook;

/// <summary>Rows of what was read in a text: made with it, said anew with it, gone with it, and the same after the logbook is folded.</summary>
public sealed class InscriptionRowsTests : IDisposable
{
    private readonly TempRegister _register = new();

    public InscriptionRowsTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_pencilled_number_is_read_back_with_what_it_says()
    {
        Write(deed => deed.SetPencilled(2, "A/P II/V, second state of three", OwnWords.None));

        var sheet = Sheet(2);

        Assert.Equal(new SaidOfNumber("proof") { Series = "A/P", Number = 2, Size = 5, Notation = "roman", State = 2, StateOf = 3 }, sheet.PencilSays);
        Assert.DoesNotContain(_register.Findings(), finding => finding.Rule is "TablesAgreeWithLogbook");
    }

    [Fact]
    public void Nothing_is_left_of_what_an_earlier_text_said()
    {
        Write(deed => deed.SetPencilled(2, "A/P II/V, second state of three", OwnWords.None));

        Write(deed => deed.SetPencilled(2, "32/at least 49", OwnWords.None));

        Assert.Equal(new SaidOfNumber("numbered") { Series = "edition", Number = 32, Size = 49, Hedge = "at-least", Notation = "arabic" }, Sheet(2).PencilSays);
    }

    [Fact]
    public void Roles_follow_the_text_and_go_with_it()
    {
        Write(deed => deed.SetInscription(1, "A. Brandt del., B. Okker sc., C. Verhey imp.", OwnWords.None, Sheet(1).Inscriptions[0].Roles));
        var three = Roles();

        Write(deed => deed.SetInscription(1, "B. Okker sc.", OwnWords.None, Sheet(1).Inscriptions[0].Roles));
        var one = Roles();
        Write(deed => deed.SetInscription(1, null, OwnWords.None, Sheet(1).Inscriptions[0].Roles));

        Assert.Equal(["drew A. Brandt", "engraved B. Okker", "printed C. Verhey"], three);
        Assert.Equal(["engraved B. Okker"], one);
        Assert.Empty(Roles());
        Assert.DoesNotContain(_register.Findings(), finding => finding.Rule is "TablesAgreeWithLogbook" or "SealedFactsAgree");
    }

    private IEnumerable<string> Roles() => [.. Sheet(1).Inscriptions[0].Roles.Select(role => $"{role.Role} {role.Name}")];

    private Impression Sheet(long id) => _register.Store.Read(reader => reader.Work(1)!.Impressions.First(sheet => sheet.Id == id));

    private void Write(Action<Deed> set) => _register.Store.Write("inscribe", writing =>
    {
        set(writing.On(Root.Work(1)));

        return true;
    });
}
