using System.Reflection;

namespace EditionRegister.EndToEnd.Tests;

/// <summary>The arrows between the projects never turn back.</summary>
public sealed class ReferencesTests
{
    [Theory]
    [InlineData("EditionRegister.Domain", "")]
    [InlineData("EditionRegister.Store", "Domain")]
    [InlineData("EditionRegister.Formats", "Domain")]
    [InlineData("EditionRegister.UseCases", "Store Formats Domain")]
    [InlineData("EditionRegister.Tui", "UseCases Store Domain")]
    [InlineData("edreg", "UseCases Tui Store Domain")]
    public void Every_project_knows_only_those_below_it(string assembly, string may)
    {
        var allowed = may.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(name => "EditionRegister." + name).ToList();

        var ours = Assembly.Load(assembly).GetReferencedAssemblies().Select(name => name.Name!).Where(name => name.StartsWith("EditionRegister.", StringComparison.Ordinal));

        Assert.DoesNotContain(ours, name => !allowed.Contains(name));
    }

    [Theory]
    [InlineData("EditionRegister.Domain")]
    public void The_domain_references_nothing_but_the_system(string assembly) =>
        Assert.DoesNotContain(Assembly.Load(assembly).GetReferencedAssemblies(), name => !name.Name!.StartsWith("System", StringComparison.Ordinal));

    [Theory]
    [InlineData("Microsoft.EntityFrameworkCore", "EditionRegister.Store EditionRegister.UseCases")]
    [InlineData("SkiaSharp", "EditionRegister.Formats")]
    [InlineData("QRCoder", "EditionRegister.Formats")]
    [InlineData("CsvHelper", "EditionRegister.Formats")]
    [InlineData("System.CommandLine", "edreg")]
    [InlineData("Terminal.Gui", "EditionRegister.Tui")]
    public void A_package_stays_where_it_belongs(string package, string where)
    {
        var ours = new[] { "EditionRegister.Domain", "EditionRegister.Store", "EditionRegister.Formats", "EditionRegister.UseCases", "EditionRegister.Tui", "edreg" };

        var users = ours.Where(name => Assembly.Load(name).GetReferencedAssemblies().Any(reference => reference.Name == package));

        Assert.DoesNotContain(users, name => !where.Split(' ').Contains(name));
    }
}
