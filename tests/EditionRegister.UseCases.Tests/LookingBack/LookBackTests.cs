using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Inventory;
using EditionRegister.UseCases.Looking;
using EditionRegister.UseCases.LookingBack;
using EditionRegister.UseCases.Moves;
using static EditionRegister.UseCases.Tests.SmallEdition;

namespace EditionRegister.UseCases.Tests.LookingBack;

/// <summary>
/// “Harbour” is made on 1 March. On 10 March 1/4 goes to the gallery. The sale of 2/4, of 5 March, is written down on 20 March only; the gallery gave 1/4
/// back on 12 March, which is written down on 21 March. Looked at is the end of 15 March.
/// </summary>
public sealed class LookBackTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 3, 15);

    private readonly TempRegister _register = new();

    public LookBackTests()
    {
        Make(_register.Register);
        Register.PriceImpressions.Run(Numbers("1-3"), 18_000, "EUR", null);
        On(10);
        Register.Consign.Run(Numbers("1"), "Quay Gallery", RecordedDate.Read("2026-03-10"));
        Register.IssueCertificates.Run(Numbers("1"), supersede: false);
    }

    private Register Register => _register.Register;

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_map_reads_as_it_did_and_late_entries_stand_beside_it()
    {
        WriteDownLate();
        var (first, second) = (Register.Sheet(1).ShownCode, Register.Sheet(2).ShownCode);

        using var then = Register.LookBack.To(Day);
        var map = then.Map(Edition);

        Assert.Equal("with Quay Gallery", Where(map.Map.Numberings[0].Cells[0].Where));
        Assert.Equal(
            [
                new KnownDifference(first, "1/4", "Harbour", "with Quay Gallery, belongs to Mira Tolland", "in Studio › Drawer 1, belongs to Mira Tolland", "2026-03-21T10:00:00.000Z"),
                new KnownDifference(second, "2/4", "Harbour", "in Studio › Drawer 1, belongs to Mira Tolland", "in Studio › Drawer 1, belongs to Inés Vargøy", "2026-03-20T10:00:01.000Z"),
            ],
            map.Differences.Select(one => one with { Recorded = one.Recorded is { } at ? at[..11] + "10:00:0" + (one.Code == second ? "1" : "0") + ".000Z" : null }));
    }

    [Fact]
    public void What_is_only_possibly_of_that_day_is_said_so()
    {
        On(20);
        Register.RecordPerson.Run(new People.NewPerson { Name = "Ada Brook" });
        Register.SellImpressions.Run(Numbers("2"), new SalePeople("Ada Brook"), new Sale { Date = RecordedDate.Read("2026-03") });

        using var then = Register.LookBack.To(Day);

        Assert.Equal(
            ["in Studio › Drawer 1, belongs to Mira Tolland; perhaps already Ada Brook's (2026-03)"],
            then.Map(Edition).Differences.Select(one => one.Now));
    }

    [Fact]
    public void What_was_recorded_by_mistake_and_put_right_since_shows_both()
    {
        On(20);
        Register.TakeLinkBack.Run(Numbers("1"), move: true, transfer: false);

        using var then = Register.LookBack.To(Day);

        var one = Assert.Single(then.Map(Edition).Differences);
        Assert.Equal(("with Quay Gallery, belongs to Mira Tolland", "in Studio › Drawer 1, belongs to Mira Tolland", null), (one.Then, one.Now, one.Recorded));
    }

    [Fact]
    public void What_happened_after_the_day_is_no_difference()
    {
        On(20);
        Register.ReturnImpressions.Run(Numbers("1"), null, "Drawer 1", RecordedDate.Read("2026-03-18"));

        using var then = Register.LookBack.To(Day);

        Assert.Empty(then.Map(Edition).Differences);
        Assert.Equal("with Quay Gallery", Where(then.Map(Edition).Map.Numberings[0].Cells[0].Where));
    }

    [Fact]
    public void An_impression_shows_the_certificate_that_stood_valid_and_none_before_it_was_issued()
    {
        On(20);
        var code = Register.Sheet(1).ShownCode;
        Register.IssueCertificates.Run(Numbers("1"), supersede: true);

        using var before = Register.LookBack.To(new DateOnly(2026, 3, 9));
        using var then = Register.LookBack.To(Day);
        using var now = Register.LookBack.To(new DateOnly(2026, 3, 20));

        Assert.Null(before.Impression(code).Certificate);
        Assert.Equal($"{code}-C1", then.Impression(code).Certificate!.Statement!.Serial);
        Assert.Equal($"{code}-C2", now.Impression(code).Certificate!.Statement!.Serial);
    }

    [Fact]
    public void A_sheet_recorded_later_that_was_printed_by_then_is_named()
    {
        On(20);
        Register.RecordPrintRun.Run(Work, new Domain.Works.NewPrintRun { Purpose = "proofing", Started = 1, Printed = RecordedDate.Read("2026-01-20") }, "Drawer 1");
        Register.RecordPrintRun.Run(Work, new Domain.Works.NewPrintRun { Purpose = "proofing", Started = 1, Printed = RecordedDate.Read("2026-03-19") }, "Drawer 1");

        using var then = Register.LookBack.To(Day);

        var one = Assert.Single(then.List(new ImpressionsWanted()).Differences);
        Assert.Equal((null, "in Studio › Drawer 1, belongs to Mira Tolland"), (one.Then, one.Now));
        Assert.Equal(5, then.List(new ImpressionsWanted()).Listed.All);
        Assert.Equal([1, 2, 3, 4, 1], then.List(new ImpressionsWanted { Texts = ["Harbour"] }).Listed.Page.Select(listed => listed.Impression.Number));
    }

    [Fact]
    public void The_inventory_reads_as_it_would_have_with_a_last_column_for_what_is_known_now()
    {
        var written = Csv(stream => Register.ExportInventory.Run(new InventoryChoice(), stream));
        WriteDownLate();

        using var then = Register.LookBack.To(Day);
        var again = Csv(stream => then.ExportInventory(new InventoryChoice(), stream));

        Assert.Equal(written.Select(line => line + (line.StartsWith("code,", StringComparison.Ordinal) ? ",now known" : ",")), again.Select(line => Known(line) is { } known ? line[..^(known.Length - 1)] : line));
        Assert.Equal(
            ["\"in Studio › Drawer 1, belongs to Inés Vargøy\"", "\"in Studio › Drawer 1, belongs to Mira Tolland\""],
            again.Select(Known).OfType<string>().Select(known => known[1..]).Order(StringComparer.Ordinal));
    }

    // Three sheets at 180.00: 540.00 then. Sold on 5 March, 2/4 was no longer Mira's on the 15th: 360.00 of hers, by what is known now.
    [Fact]
    public void A_schedule_sums_what_was_hers_then_and_what_is_known_to_have_been()
    {
        WriteDownLate();

        using var then = Register.LookBack.To(Day);
        var schedule = then.Schedule(new ScheduleChoice(Owner: "Mira Tolland"));

        Assert.Equal([("EUR", 54_000m, 3)], schedule.Then.Sums.Select(sum => (sum.Currency, sum.MinorUnits, sum.Sheets)));
        Assert.Equal([("EUR", 36_000m, 2)], schedule.Now.Sums.Select(sum => (sum.Currency, sum.MinorUnits, sum.Sheets)));
        Assert.Equal((2, 2), (schedule.Then.WithoutValue, schedule.Now.WithoutValue));
        Assert.Equal(2, schedule.Differences.Count);
    }

    [Fact]
    public void An_edition_that_was_not_declared_yet_is_refused()
    {
        On(20);
        Register.RecordWork.Run(new Domain.Works.NewWork { Title = "Dyke", MakerUnknown = true }, []);

        using var then = Register.LookBack.To(Day);

        Assert.Equal("edition-not-found", Assert.Throws<Domain.RefusedException>(() => then.Map(2)).Name);
    }

    private static string? Known(string line) => line.IndexOf(",\"in Studio", StringComparison.Ordinal) is > 0 and var at ? line[at..] : null;

    private static string Where(string cell) => cell.StartsWith("Quay", StringComparison.Ordinal) ? "with " + cell : cell;

    private static string[] Csv(Action<Stream> write)
    {
        using MemoryStream stream = new();
        write(stream);

        return System.Text.Encoding.UTF8.GetString(stream.ToArray()).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
    }

    private void On(int day) => _register.Time.SetUtcNow(new DateTimeOffset(2026, 3, day, 10, 0, 0, TimeSpan.Zero));

    private void WriteDownLate()
    {
        On(20);
        Register.RecordPerson.Run(new People.NewPerson { Name = "Inés Vargøy" });
        Register.SellImpressions.Run(Numbers("2"), new SalePeople("Inés Vargøy"), new Sale { Price = 18_000, Currency = "EUR", Date = RecordedDate.Read("2026-03-05") });
        On(21);
        Register.ReturnImpressions.Run(Numbers("1"), null, "Drawer 1", RecordedDate.Read("2026-03-12"));
    }
}
