using EditionRegister.Domain;
using EditionRegister.Store.Sqlite;
using EditionRegister.UseCases.ReadingIn;
using Microsoft.Data.Sqlite;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Refusals that no test can bring about for certain on every machine. Kept short: each says why.</summary>
internal static class Unprovoked
{
    public static IReadOnlyList<Provocation> All { get; } =
    [
        // Needs a disk of its own that can be filled.
        new("register-disk-full", _ => throw Explained(13)),

        // Needs a disk that fails.
        new("register-cannot-open", _ => throw Explained(10)),

        // Permissions do not hold back a test that runs as the machine's administrator, as it does in a container.
        new("register-read-only", _ => throw Explained(8)),
        new("file-unreadable", _ => throw ReadInRefusals.FileUnreadable("/studio/sheets.csv", "Access to the path '/studio/sheets.csv' is denied.")),
    ];

    private static RefusedException Explained(int error) =>
        (RefusedException)SqliteFailures.Explain(new SqliteException("", error), "/studio/register/register.db");
}
