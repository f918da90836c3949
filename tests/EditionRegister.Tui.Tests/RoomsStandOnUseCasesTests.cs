using System.Reflection;

namespace EditionRegister.Tui.Tests;

/// <summary>The rooms are still to be built; what they will stand on is settled.</summary>
public sealed class RoomsStandOnUseCasesTests
{
    [Fact]
    public void The_rooms_open_no_file_and_draw_no_document_themselves()
    {
        var known = Assembly.Load("EditionRegister.Tui").GetReferencedAssemblies().Select(name => name.Name);

        Assert.DoesNotContain("EditionRegister.Store", known);
        Assert.DoesNotContain("EditionRegister.Formats", known);
    }
}
