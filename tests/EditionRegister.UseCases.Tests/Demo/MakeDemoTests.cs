using EditionRegister.Store;
using EditionRegister.UseCases.Demo;

namespace EditionRegister.UseCases.Tests.Demo;

public sealed class MakeDemoTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_demo_has_nothing_to_find()
    {
        var register = new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("a")));

        var findings = register.CheckRegister.Run().ToList();

        Assert.Empty(findings);
    }

    [Fact]
    public void Two_runs_write_the_same_bytes_into_every_document()
    {
        var one = MakeDemo.WriteDocuments(new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("a"))), _folder.In("papers a"));
        var other = MakeDemo.WriteDocuments(new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("b"))), _folder.In("papers b"));

        Assert.Equal(4, one.Count);
        Assert.All(one.Zip(other), pair => Assert.Equal(File.ReadAllBytes(pair.First), File.ReadAllBytes(pair.Second)));
    }

    [Fact]
    public void Two_runs_tell_the_same_story_to_the_last_hash()
    {
        var one = new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("a")));
        var other = new MakeDemo(_ => { }).Run(new RegisterFolder(_folder.In("b")));

        Assert.Equal(one.LookAround.Head(), other.LookAround.Head());
    }
}
