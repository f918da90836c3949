using EditionRegister.Domain.Impressions;
using static EditionRegister.UseCases.Tests.Refusals.Studio;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Findings that are not accepted so.</summary>
internal static class AcceptanceProvocations
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        new("acceptance-reason-missing", studio => studio.Register.AcceptFinding.Run(Found(studio), " ")),
        new("finding-not-found", studio => studio.Register.AcceptFinding.Run("7KQ4M2", "seen")),
        new("finding-of-the-file", studio => studio.Register.AcceptFinding.Run("LogbookIsUnbroken", "seen")),
        new("finding-accepted-already", studio =>
        {
            var handle = Found(studio);
            studio.Register.AcceptFinding.Run(handle, "The pencil is right, and so is the list.");
            studio.Register.AcceptFinding.Run(handle, "Once more.");
        }),
        new("finding-not-accepted", studio => studio.Register.TakeAcceptanceBack.Run(Found(studio))),
    ];

    /// <summary>Pencils another number on a sheet than it was given, and answers what a check calls that.</summary>
    private static string Found(Studio studio)
    {
        studio.Register.InscribeImpressions.Run(Pile(1, "2"), new WhatStandsOnIt { Pencilled = "3/4" });

        return studio.Register.CheckRegister.Run().First(finding => finding.Rule == "PencilAgreesWithRecord").Handle!;
    }
}
