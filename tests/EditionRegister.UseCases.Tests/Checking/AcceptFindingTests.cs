using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Tests.Checking;

public sealed class AcceptFindingTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public AcceptFindingTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        Pencil("2/4");
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_finding_has_the_same_handle_in_every_run()
    {
        var handle = Found().Handle;

        Assert.Matches("^[2-9A-HJ-NP-Z]{6}$", handle);
        Assert.Equal(handle, Found().Handle);
    }

    [Fact]
    public void An_accepted_finding_stays_on_record_with_its_reason_and_day()
    {
        var accepted = _register.AcceptFinding.Run(Found().Handle!.ToLowerInvariant(), " the list is older than the pencil ");

        var finding = Found();
        Assert.Equal(accepted, finding with { Accepted = null });
        Assert.Equal(("the list is older than the pencil", "2026-03-01", null), (finding.Accepted!.Reason, finding.Accepted.On.Text, finding.Accepted.By));
    }

    [Fact]
    public void It_is_an_entry_of_the_work_and_says_who()
    {
        var register = Register.Open(_register.Folder, by: 1);
        register.AcceptFinding.Run(Found().Handle!, "seen");

        Assert.Equal("Mira Tolland", Found().Accepted!.By);
        var entry = register.LookAround.Logbook(1)[0];
        Assert.Equal(("accept-finding", "work/1"), (entry.Deed, entry.Root));
    }

    [Fact]
    public void It_returns_when_its_facts_change_and_is_accepted_again_when_they_change_back()
    {
        _register.AcceptFinding.Run(Found().Handle!, "seen");

        Pencil("3/4");
        var changed = Found();
        Pencil("2/4");

        Assert.Null(changed.Accepted);
        Assert.NotNull(Found().Accepted);
    }

    [Fact]
    public void Taken_back_it_counts_again_and_may_be_accepted_for_another_reason()
    {
        var handle = Found().Handle!;
        _register.AcceptFinding.Run(handle, "seen");

        _register.TakeAcceptanceBack.Run(handle);

        Assert.Null(Found().Accepted);

        _register.AcceptFinding.Run(handle, "seen twice");

        Assert.Equal("seen twice", Found().Accepted!.Reason);
        Assert.Equal(["PencilAgreesWithRecord"], _register.CheckRegister.Run().Select(finding => finding.Rule).Distinct());
    }

    [Fact]
    public void Erasing_its_words_lets_the_acceptance_lapse()
    {
        _register.AcceptFinding.Run(Found().Handle!, "seen");

        new RegisterStore(_register.Folder, Surroundings.Usual).Write("erase", writing =>
        {
            writing.On(Root.Work(1)).Erase("accepted_finding", 1);

            return true;
        });

        Assert.Null(Found().Accepted);
        Assert.DoesNotContain(_register.CheckRegister.Run(), finding => finding.Rule != "PencilAgreesWithRecord");
    }

    private void Pencil(string text) => _register.InscribeImpressions.Run(SmallEdition.Numbers("1"), new WhatStandsOnIt { Pencilled = text });

    private Finding Found() => _register.CheckRegister.Run().First(finding => finding.Rule == "PencilAgreesWithRecord");
}
