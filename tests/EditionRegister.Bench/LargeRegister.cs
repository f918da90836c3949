using EditionRegister.Domain;
using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.Registers;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Bench;

/// <summary>A register of many works, made through the use cases, so that its logbook is one a person could have written.</summary>
internal static partial class LargeRegister
{
    public static IReadOnlyList<string> Tables { get; } = [.. FactCatalogue.Tables.Select(table => table.Name), "logbook", "sealed", "frontier"];

    /// <summary>Answers how many rows its tables hold.</summary>
    public static long Make(RegisterFolder folder, int works, int sheetsEach)
    {
        var register = new MakeRegister(Surroundings.Usual).Run(folder, new RegisterSettings { Name = "Bench" });
        register.RecordPerson.Run(new NewPerson { Name = "Mira Tolland" });

        for (var i = 1; i <= works; i++)
        {
            var work = register.RecordWork.Run(new NewWork { Title = FormattableString.Invariant($"Study {i}") }, ["1"]);
            ImpressionChoice all = new() { Work = work, Pile = FormattableString.Invariant($"1-{sheetsEach}") };
            register.RecordMatrix.Run(work, "block", "lino", "no", Domain.Dates.RecordedDate.None);
            register.RecordPrintRun.Run(work, new NewPrintRun { Started = sheetsEach, Printed = Domain.Dates.RecordedDate.Read("2026-02") });
            register.SortPulls.Run(all, "kept");
            var edition = register.DeclareEdition.Run(work, new NewEdition { Numberings = [NumberingPlan.Read(FormattableString.Invariant($"1-{sheetsEach}"))] });
            register.GiveNumbers.AsPiled(edition, null, null);
            register.InscribeImpressions.Run(all, new WhatStandsOnIt { AsSpelled = true, Signature = "M. Tolland" });
        }

        using SqliteConnection connection = new($"Data Source={folder.Database};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var count = connection.CreateCommand();
        count.CommandText = $"SELECT {string.Join(" + ", Tables.Select(table => $"(SELECT count(*) FROM {table})"))}";

        return (long)count.ExecuteScalar()!;
    }
}
