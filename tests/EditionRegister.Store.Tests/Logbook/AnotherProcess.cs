using System.Diagnostics;
using System.Runtime.CompilerServices;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Logbook;

namespace EditionRegister.Store.Tests.Logbook;

/// <summary>A second program at the same register: this very program, started again with a job in its environment.</summary>
internal static class AnotherProcess
{
    public const int DeedsEach = 200;
    public const int PeopleAtOnce = 10_000;

    private const string Job = "EDREG_TEST_JOB";
    private const string Folder = "EDREG_TEST_FOLDER";

    public static Process Start(string job, RegisterFolder folder)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", ["exec", typeof(AnotherProcess).Assembly.Location])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment[Job] = job;
        start.Environment[Folder] = folder.FullPath;

        return Process.Start(start)!;
    }

    /// <summary>Before the test runner's own entry point gets its turn.</summary>
    [ModuleInitializer]
    internal static void RunWhenAsked()
    {
        if (Environment.GetEnvironmentVariable(Job) is not { } job)
        {
            return;
        }

        try
        {
            RegisterStore store = new(new RegisterFolder(Environment.GetEnvironmentVariable(Folder)!), Surroundings.Usual);
            Do(job, store);
            Environment.Exit(0);
        }
        catch (Exception failure)
        {
            Console.Error.WriteLine(failure);
            Environment.Exit(1);
        }
    }

    /// <summary>Each deed reads, decides and writes: a price counted up, and an inscription with the next ordinal.</summary>
    public static void CountUp(RegisterStore store)
    {
        for (var deed = 0; deed < DeedsEach; deed++)
        {
            store.Write("count", CountUp);
        }
    }

    private static void Do(string job, RegisterStore store)
    {
        Console.WriteLine("begun");

        if (job == "count")
        {
            CountUp(store);
        }
        else
        {
            store.Write("class", AddPeople);
        }
    }

    private static bool CountUp(Writing writing)
    {
        var work = writing.Read.Work(1)!;
        var deed = writing.On(Root.Work(1));
        deed.Set("impression", 2, ("asking", (work.Impressions[1].Asking ?? 0) + 1), ("asking_currency", "EUR"));
        deed.Set(
            "inscription", deed.NewId("inscription"),
            ("impression", 2), ("ordinal", work.Impressions[1].Inscriptions.Count + 1), ("side", "back"), ("manner", "stamped"), ("text", "counted"));

        return true;
    }

    private static bool AddPeople(Writing writing)
    {
        var first = writing.On(Root.Register).NewId("person");

        for (var id = first; id < first + PeopleAtOnce; id++)
        {
            writing.On(Root.Person(id)).Set("person", id, ("what", "person"), ("name", $"Pupil {id}"), ("protected", "yes"), ("public_name", "initials"), ("erased", "no"));
        }

        return true;
    }
}
