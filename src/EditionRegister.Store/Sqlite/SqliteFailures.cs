using System.Globalization;
using EditionRegister.Domain;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Sqlite;

/// <summary>What can go wrong with the file itself, in words.</summary>
internal static class SqliteFailures
{
    public static RefusedException NotThere(string path) =>
        new("register-not-found", $"There is no register at {path}. Nothing was changed. Make one with `edreg new FOLDER`, or name its folder with --register.");

    public static RefusedException NotOurs(string path) =>
        new("register-cannot-open", $"{path} is a database of another program, or not a register any more. Nothing was changed. Name the register's folder with --register, or take the newest copy from its backups folder.");

    public static RefusedException Newer(string path, long schema) =>
        new("register-newer", string.Create(CultureInfo.InvariantCulture, $"{path} was written by a newer edreg (form {schema}; this program knows forms up to {Schema.Newest}). Nothing was changed. Install the newer program."));

    public static RefusedException NotOfItsForm(string path, int form, string standing) =>
        new("register-damaged", string.Create(CultureInfo.InvariantCulture, $"{path} says it has form {form}, but the {standing} of a newer form stands in it, so it cannot be upgraded. Nothing was changed. Run `edreg check`, and go on from the newest copy in the backups folder."));

    public static RefusedException NotCopied(string folder, string why) =>
        new("upgrade-not-copied", $"This register is of an older form and is upgraded by the first change, but the copy that is made before could not be written to {folder} ({why.TrimEnd('.')}). Nothing was changed. Make room there, or look whether you may write to it, then do this again.");

    public static RefusedException Busy(string path) =>
        new("register-busy", $"Another program has been writing to {path} for ten seconds. Nothing was changed. Wait until it has finished, then do this again.");

    /// <summary>Turns what the database reports about its file into a refusal; anything else is our own mistake and passes unchanged.</summary>
    public static Exception Explain(SqliteException failure, string path) => failure.SqliteErrorCode switch
    {
        5 or 6 => Busy(path),
        8 => new RefusedException("register-read-only", $"{path} may be read but not written. Nothing was changed. Change the permissions of the file and its folder, or copy the folder to a disk of your own."),
        10 => new RefusedException("register-cannot-open", $"The disk reports an error while reading or writing {path}. Nothing was changed. Copy the folder to another disk at once and run `edreg check` on the copy."),
        11 => new RefusedException("register-cannot-open", $"{path} is damaged and cannot be read. Nothing was changed. Keep a copy of the file as it is, and go on from the newest copy in the backups folder."),
        13 => new RefusedException("register-disk-full", $"The disk that holds {path} is full. Nothing was changed. Make room, then do this again."),
        14 => new RefusedException("register-cannot-open", $"{path} cannot be opened. Nothing was changed. Look whether the file and its folder may be read and written by you."),
        26 => NotOurs(path),
        _ => failure,
    };
}
