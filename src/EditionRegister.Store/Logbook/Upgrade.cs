using System.Globalization;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Logbook;

/// <summary>
/// Brings a register of an older form to the newest, within the transaction of the first deed that is done to it: scripts, one entry
/// and the deed stand together or not at all. Before they do, the file as it was is copied into the backups folder.
/// </summary>
internal sealed class Upgrade(SqliteConnection connection, string database)
{
    private readonly int _from = Schema.FormOf(connection);

    public bool IsDue => _from < Schema.Newest;

    public static string Done(string copy) => string.Create(
        CultureInfo.InvariantCulture,
        $"This register was of an older form and has been upgraded to form {Schema.Newest}; the file as it was is kept at {copy}.");

    /// <param name="append">Appends what a writing sets, under a deed's name.</param>
    /// <param name="writing">The writing of the deed under way, for its time.</param>
    /// <exception cref="Domain.RefusedException">register-damaged: what the scripts make stands there already.</exception>
    public void Run(Action<Writing, string> append, Writing writing)
    {
        var older = Schema.AsShipped(_from);
        var found = Schema.AsFound(connection);

        if (Schema.AsShipped(Schema.Newest).Keys.FirstOrDefault(name => !older.ContainsKey(name) && found.ContainsKey(name)) is { } standing)
        {
            throw SqliteFailures.NotOfItsForm(database, _from, standing);
        }

        Schema.MakeTables(connection, _from + 1, Schema.Newest);
        Schema.SayForm(connection, Schema.Newest);
        Guards.PutBack(connection, Schema.Newest);
        Writing own = new(connection, writing.Randomness, writing.At);
        own.On(Root.Register).Set("register", 1, ("schema", Schema.Newest));
        Seeds.SowWhatCameAfter(_from, own.On(Root.Register));
        append(own, "upgrade-register");
    }

    /// <summary>Copies the file as it was last committed: this connection holds the write lock, so nobody else has changed it since.</summary>
    /// <param name="at">When, UTC, ISO 8601; names the copy.</param>
    /// <exception cref="Domain.RefusedException">upgrade-not-copied.</exception>
    public string Copy(string at)
    {
        var folder = new RegisterFolder(Path.GetDirectoryName(Path.GetFullPath(database))!).Backups;

        try
        {
            var copy = NewName(folder, at);
            FreshFile.Make(copy, CopyInto);

            return copy;
        }
        catch (Exception inTheWay) when (inTheWay is IOException or UnauthorizedAccessException or SqliteException)
        {
            throw SqliteFailures.NotCopied(folder, inTheWay.Message);
        }
    }

    private void CopyInto(string beside)
    {
        using var asItWas = SqliteFile.OpenToRead(database);
        using SqliteConnection copy = new(new SqliteConnectionStringBuilder { DataSource = beside, Pooling = false }.ToString());
        copy.Open();
        asItWas.BackupDatabase(copy);
    }

    private string NewName(string folder, string at)
    {
        var time = string.Concat(at[..19].Where(letter => letter is not ('-' or ':')));
        var name = string.Create(CultureInfo.InvariantCulture, $"form-{_from}-{time}Z");

        return Enumerable.Range(1, 999)
            .Select(count => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{name}{(count == 1 ? "" : $"-{count}")}.db")))
            .First(path => !File.Exists(path));
    }
}
