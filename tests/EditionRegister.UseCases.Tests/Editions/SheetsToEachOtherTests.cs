using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Integrity;
using EditionRegister.Domain.Sizes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Tests.Editions;

/// <summary>Replacements, ghosts, variants, dedications and seconds: what one sheet is, and what it is to another.</summary>
public sealed class SheetsToEachOtherTests : IDisposable
{
    private readonly TempRegister _temp = new();
    private readonly Register _register;

    public SheetsToEachOtherTests()
    {
        _register = SmallEdition.Make(_temp.Register);
        _register.GiveNumbers.TakeBack(SmallEdition.Numbers("4"));
        _register.SortPulls.Run(new ImpressionChoice { Work = SmallEdition.Work, Pile = "4" }, "spare");
        _register.InscribeImpressions.Run(SmallEdition.Numbers("1-3"), new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
    }

    public void Dispose() => _temp.Dispose();

    private Work Work => _register.LookAround.Work(SmallEdition.Work);

    private Impression Spare => Work.Impressions.First(sheet => sheet.Ordinal == 4);

    [Fact]
    public void The_number_of_a_damaged_sheet_goes_to_a_spare_and_both_tell_it()
    {
        _register.IssueCertificates.Run(SmallEdition.Numbers("2"));
        var old = _register.Sheet(2);

        _register.ReplaceSheet.Run(old.ShownCode, Spare.ShownCode, new Replacement { Fault = "crease", Date = RecordedDate.Read("2026-03-03"), Reason = "by the framer" });

        var (now, was) = (Spare, Work.Impressions.First(sheet => sheet.Id == old.Id));
        Assert.Equal(("kept", 2, "left-out", null), (now.Standing, now.Number, was.Standing, was.Number));
        Assert.Equal(("withdrawn", (string?)null), (was.Documents[0].Standing, was.Pencilled));
        Assert.Equal(("number", "2/4", null), (was.Changes[0].What, was.Changes[0].Was, was.Changes[0].Became));
        Assert.Equal($"{old.ShownCode} (crease), 3 March 2026", SheetText.Replaces(Work, now));
        Assert.Equal($"{now.ShownCode}, as 2/4, 3 March 2026", SheetText.ReplacedBy(Work, was));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void The_new_certificate_discloses_the_replacement()
    {
        var old = _register.Sheet(2).ShownCode;
        _register.ReplaceSheet.Run(old, Spare.ShownCode, new Replacement { Fault = "tear", Date = RecordedDate.Read("2026-03-03") });

        _register.IssueCertificates.Run(SmallEdition.Numbers("2"));

        var statement = CertificateStatementText.Read(Spare.ValidCertificate!.Statement!)!;
        Assert.Equal(("Takes the place of sheet", $"{old} (tear), 3 March 2026"), statement.Lines.Where(line => line.Key == "replaces").Select(line => (line.Label, line.Value)).Single());
        Assert.Empty(_register.CheckRegister.Run());
    }

    // The numbers are four before and after: no number is made, and the size stays.
    [Fact]
    public void No_number_is_made()
    {
        var before = _register.LookAround.Edition(SmallEdition.Edition).Edition;

        _register.ReplaceSheet.Run(_register.Sheet(2).ShownCode, Spare.ShownCode, new Replacement { Fault = "tear" });

        var after = _register.LookAround.Edition(SmallEdition.Edition).Edition;
        Assert.Equal((4, 5), (after.Size, after.Total));
        Assert.Equal(before.Numberings.SelectMany(one => one.Numbers).Select(slot => (slot.Id, slot.Ordinal, slot.Fate)), after.Numberings.SelectMany(one => one.Numbers).Select(slot => (slot.Id, slot.Ordinal, slot.Fate)));
    }

    [Fact]
    public void A_ghost_dated_before_its_print_is_asked_about()
    {
        var (ghost, print) = (_register.Sheet(3).ShownCode, _register.Sheet(2).ShownCode);

        _register.LinkGhost.Run(ghost, print, RecordedDate.Read("2026-01-31"));

        var finding = Assert.Single(_register.CheckRegister.Run());
        Assert.Equal(
            (Severity.Query, $"{ghost} is the ghost of {print} of “Harbour”, and was pulled 2026-01-31, before its print (2026-02-01)."),
            (finding.Severity, finding.Message));
    }

    [Fact]
    public void Two_impressions_may_be_varied_alike_and_each_says_so()
    {
        _register.VarySheets.Run(SmallEdition.Numbers("1-2"), "wiped in ochre");

        var facts = new[] { 1, 2, 3 }.Select(number => CertificateFacts.Of(Work, _register.Sheet(number), SizeStyle.Millimetres).FirstOrDefault(fact => fact.Key == "variant")?.Value);

        Assert.Equal(["wiped in ochre", "wiped in ochre", null], facts);
        Assert.Contains("wiped in ochre", LabelComposer.Of(Work, _register.Sheet(1), null, SizeStyle.Millimetres).Lines);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Theory]
    [InlineData("full", "for Inés Vargøy, with thanks")]
    [InlineData("wording", "for private collection, with thanks")]
    [InlineData("initials", "for I. V., with thanks")]
    public void A_dedication_is_said_by_name_policy(string policy, string said)
    {
        _register.RecordPerson.Run(new NewPerson { Name = "Inés Vargøy", PublicName = policy, Wording = policy == "wording" ? "private collection" : null });

        _register.DedicateSheets.Run(SmallEdition.Numbers("1"), "for Inés Vargøy, with thanks");

        Assert.Equal(said, SheetText.PublicDedication(Work, _register.Sheet(1)));
        Assert.Equal("for Inés Vargøy, with thanks", _register.Sheet(1).Dedication);
    }

    [Fact]
    public void A_pupils_dedication_names_nobody()
    {
        _register.EditPerson.Run("1", new PersonCorrection { IsProtected = true, PublicName = "unnamed" });
        _register.DedicateSheets.Run(SmallEdition.Numbers("1"), "for Grandma Rose");

        Assert.Equal("dedicated copy", SheetText.PublicDedication(Work, _register.Sheet(1)));
    }

    [Fact]
    public void A_sheet_left_out_is_sold_as_a_second_outside_the_edition()
    {
        _register.SortPulls.Run(ImpressionChoice.OfCode(Spare.ShownCode), "left-out", "smudge");

        _register.SellImpressions.Run(ImpressionChoice.OfCode(Spare.ShownCode), new SalePeople("Quay Gallery"), new Sale { Price = 2_000, Currency = "EUR", Date = RecordedDate.Read("2026-03-01") });

        Assert.Contains(("Standing", "left out, smudge, sold as a sheet outside the edition"), Wording.ImpressionFacts.OfTheSheet(Work, Spare));
        Assert.StartsWith("left out", LabelComposer.Of(Work, Spare, null, SizeStyle.Millimetres).Lines[0], StringComparison.Ordinal);
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void A_certificate_is_not_asked_for_what_came_after_it_and_is_for_what_it_states()
    {
        _register.VarySheets.Run(SmallEdition.Numbers("1"), "wiped in ochre");
        _register.IssueCertificates.Run(SmallEdition.Numbers("1, 2"));
        _register.VarySheets.Run(SmallEdition.Numbers("2"), "wiped in blue");
        var before = _register.CheckRegister.Run().ToList();

        _register.VarySheets.Run(SmallEdition.Numbers("1"), null);

        Assert.Empty(before);
        var code = _register.Sheet(1).ShownCode;
        Assert.Equal(
            [$"Certificate {code}-C1 for 1/4 of “Harbour” ({code}) states “wiped in ochre” under This impression, and the register now says nothing of it."],
            _register.CheckRegister.Run().Select(finding => finding.Message));
    }

    // A monotype and its ghost: two unique impressions of one work, each 1/1, and neither is a second edition.
    [Fact]
    public void Each_unique_print_of_a_plate_has_its_own_one_of_one()
    {
        var work = _register.RecordWork.Run(new NewWork { Title = "Undertow" }, ["Mira Tolland"]);
        _register.RecordPrintRun.Run(work, new NewPrintRun { Pile = 2, Printed = RecordedDate.Read("2026-03-01") });
        _register.SortPulls.Run(new ImpressionChoice { Work = work, Pile = "1-2" }, "kept");

        foreach (var place in new[] { "1", "2" })
        {
            var edition = _register.DeclareEdition.Run(work, new NewEdition { Kind = "unique", Numberings = [NumberingPlan.Read("1-1")] });
            _register.GiveNumbers.ByHand(edition, new ImpressionChoice { Work = work, Pile = place }, "1");
            _register.InscribeImpressions.Run(new ImpressionChoice { Edition = edition, Sheets = "1" }, new WhatStandsOnIt { AsSpelled = true });
        }

        Assert.Empty(_register.CheckRegister.Run());
    }
}
