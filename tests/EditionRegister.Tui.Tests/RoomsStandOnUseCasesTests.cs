using System.Reflection;
using EditionRegister.Tui.Hall;

namespace EditionRegister.Tui.Tests;

/// <summary>The rooms know what the register can do, and nothing of files, drawings or terminals.</summary>
public sealed class RoomsStandOnUseCasesTests
{
    private static readonly Assembly Tui = typeof(House).Assembly;

    [Fact]
    public void The_rooms_draw_no_document_themselves() =>
        Assert.DoesNotContain("EditionRegister.Formats", Tui.GetReferencedAssemblies().Select(name => name.Name));

    [Fact]
    public void Only_the_screen_knows_of_terminals()
    {
        const BindingFlags all = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

        var knowing =
            from type in Tui.GetTypes()
            where type.Namespace is { } name && name != "EditionRegister.Tui.Screen" && type.Name != "TextUi" && type.DeclaringType?.Name != "TextUi"
            let named = type.GetFields(all).Select(field => field.FieldType)
                .Concat(type.GetMethods(all).SelectMany(method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType)))
                .Append(type.BaseType)
            where named.Any(one => one?.Namespace?.StartsWith("Terminal.Gui", StringComparison.Ordinal) == true)
            select type.FullName;

        Assert.Empty(knowing);
    }
}
