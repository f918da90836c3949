using System.Text;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Moves;
using Microsoft.Data.Sqlite;

namespace EditionRegister.UseCases.Tests.ReadingIn;

/// <summary>A deed over several works is undone as one: every fact of every table is what it was before, as SQLite itself reads it.</summary>
public sealed class UndoBatchTests : IDisposable
{
    private static readonly string[] Kept = ["batch", "code"];

    private readonly TempFolder _folder = new();
    private readonly Register _register;

    public UndoBatchTests() => _register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("register"))));

    private ImpressionChoice Both => new() { Sheets = $"{Code(1, 9)}, {Code(2, 3)}" };

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        _folder.Dispose();
    }

    [Fact]
    public void Moves_are_taken_back_from_every_sheet()
    {
        var before = Everything();
        _register.Consign.Run(Both, "Quay Gallery", rate: 4_000);

        var undone = _register.UndoBatch.Undo(LastBatch());

        Assert.Equal(new UseCases.ReadingIn.BatchUndone(false, "consign", 2), undone);
        Assert.Equal(before, Everything());
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void Facts_that_were_changed_say_again_what_they_said_before_sealed_ones_too()
    {
        _register.InscribeImpressions.Run(ImpressionChoice.OfCode(Code(1, 9)), new WhatStandsOnIt { Condition = "fine" });
        var before = Everything();
        _register.InscribeImpressions.Run(Both, new WhatStandsOnIt { Condition = "lower left corner bent" });
        _register.PriceImpressions.Run(Both, 25_000, "EUR", "yes");

        _register.UndoBatch.Run(LastBatch());
        _register.UndoBatch.Run(LastBatch() - 2);

        Assert.Equal(before, Everything());
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void An_inscription_goes_with_what_was_read_in_it()
    {
        var before = Everything();
        _register.InscribeImpressions.Run(Both, new WhatStandsOnIt { AsSpelled = true, Inscription = "Épreuve d'artiste 3/10, A. Brandt del., B. Okker sc." });
        var inscribed = Everything();

        _register.UndoBatch.Run(LastBatch());

        Assert.Equal(before, Everything());
        Assert.Equal(4, inscribed.Split('\n').Count(row => row.StartsWith("inscription_role ", StringComparison.Ordinal)));
        Assert.Empty(_register.CheckRegister.Run());
    }

    [Fact]
    public void What_went_on_since_is_refused_and_nothing_changes()
    {
        _register.Consign.Run(Both, "Quay Gallery");
        var batch = LastBatch();
        _register.ReturnImpressions.Run(ImpressionChoice.OfCode(Code(2, 3)), null, null);
        var before = Everything();

        var refused = Assert.Throws<RefusedException>(() => _register.UndoBatch.Run(batch));

        Assert.Equal(("batch-built-on", before), (refused.Name, Everything()));
    }

    [Fact]
    public void A_batch_is_undone_once_and_an_undoing_never()
    {
        _register.Consign.Run(Both, "Quay Gallery");
        var batch = LastBatch();
        _register.UndoBatch.Run(batch);

        Assert.Equal("batch-not-found", Assert.Throws<RefusedException>(() => _register.UndoBatch.Run(batch)).Name);
        Assert.Equal("batch-not-undoable", Assert.Throws<RefusedException>(() => _register.UndoBatch.Run(LastBatch())).Name);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Any_run_of_deeds_is_undone_backwards_to_the_very_beginning(int seed)
    {
        Random random = new(seed);
        List<(long Batch, string Before)> done = [];

        for (var i = 0; i < 20; i++)
        {
            var (before, batch) = (Everything(), LastBatch());

            if (Record.Exception(() => Deed(random)) is null && LastBatch() > batch)
            {
                done.Add((LastBatch(), before));
            }
        }

        Assert.True(done.Count > 3, $"only {done.Count} deeds were done");

        foreach (var (batch, before) in Enumerable.Reverse(done))
        {
            _register.UndoBatch.Run(batch);
            Assert.Equal(before, Everything());
        }

        Assert.Empty(_register.CheckRegister.Run());
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Undoing_in_any_order_is_done_or_refused_in_words_and_the_register_stays_sound(int seed)
    {
        Random random = new(seed);
        List<long> batches = [];

        for (var i = 0; i < 20; i++)
        {
            var batch = LastBatch();

            if (Record.Exception(() => Deed(random)) is null && LastBatch() > batch)
            {
                batches.Add(LastBatch());
            }
        }

        foreach (var batch in batches.OrderBy(_ => random.Next()).ToList())
        {
            Assert.True(Record.Exception(() => _register.UndoBatch.Run(batch)) is null or RefusedException);
        }

        Assert.DoesNotContain(_register.CheckRegister.Run(), finding => finding.Severity == Domain.Integrity.Severity.Contradiction);
    }

    /// <summary>One deed on sheets of two works; it may well be refused.</summary>
    private void Deed(Random random)
    {
        ImpressionChoice choice = new() { Sheets = $"{Code(1, random.Next(9, 12))}, {Code(2, random.Next(2, 5))}, {Code(3, random.Next(1, 4))}" };

        Action[] deeds =
        [
            () => _register.PutAway.Run(choice, random.Next(2) == 0 ? "Drawer 1" : "Drawer 2", note: "tidied"),
            () => _register.Consign.Run(choice, "Quay Gallery", rate: 4_000),
            () => _register.SendAway.Run(choice, new SentTo("Westhaven School"), new Going(MoveKind.Lent, null) { Agreement = "loan" }),
            () => _register.SendAway.Run(choice, new SentTo("Joost Averink"), new Going(MoveKind.SubConsigned, null)),
            () => _register.ReturnImpressions.Run(choice, null, "Drawer 2"),
            () => _register.RecordMishap.Run(choice, MoveKind.Lost),
            () => _register.FindAgain.Run(choice, new SentTo(null, "Drawer 1")),
            () => _register.ReserveSheets.Run(choice, "Inés Vargøy", note: "asked twice"),
            () => _register.LiftReservation.Run(choice),
            () => _register.SellImpressions.Run(choice, new SalePeople("Inés Vargøy"), new Sale { Price = 9_900, Currency = "EUR", Collected = random.Next(2) == 0 }),
            () => _register.PassSheets.Run(choice, "Joost Averink", null, new Passing(MoveKind.Given, null)),
            () => _register.TakeBackFromBuyer.Run(choice, null, new BuyersReturn { IsHere = true }),
            () => _register.PriceImpressions.Run(choice, random.Next(1_000, 90_000), "EUR", "yes"),
            () => _register.InscribeImpressions.Run(choice, new WhatStandsOnIt { Condition = $"seen {random.Next(9)} times" }),
            () => _register.InscribeImpressions.Run(choice, new WhatStandsOnIt { AsSpelled = random.Next(2) == 0, Inscription = "A. Brandt del., B. Okker sc." }),
        ];
        deeds[random.Next(deeds.Length)]();
    }

    private string Code(long edition, int number) => _register.LookAround.Chosen(new ImpressionChoice { Edition = edition, Sheets = FormattableString.Invariant($"{number}") })[0].Sheets[0].ShownCode;

    private long LastBatch()
    {
        using var connection = Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT coalesce(max(id), 0) FROM batch";

        return (long)command.ExecuteScalar()!;
    }

    /// <summary>Every fact of every row but which entry wrote it.</summary>
    private string Everything()
    {
        StringBuilder all = new();
        using var connection = Open();

        foreach (var table in FactCatalogue.Tables.Where(table => !Kept.Contains(table.Name)))
        {
            using var command = connection.CreateCommand();
            command.CommandText = $"SELECT id, {string.Join(", ", table.Facts.Select(fact => fact.Name))} FROM {table.Name} ORDER BY id";
            using var reader = command.ExecuteReader();

            while (reader.Read())
            {
                all.Append(table.Name).Append(' ').AppendJoin('|', Enumerable.Range(0, reader.FieldCount).Select(i => reader.IsDBNull(i) ? "∅" : Convert.ToString(reader.GetValue(i), System.Globalization.CultureInfo.InvariantCulture))).Append('\n');
            }
        }

        return all.ToString();
    }

    private SqliteConnection Open()
    {
        SqliteConnection connection = new($"Data Source={_register.Folder.Database};Mode=ReadOnly;Pooling=False");
        connection.Open();

        return connection;
    }
}
