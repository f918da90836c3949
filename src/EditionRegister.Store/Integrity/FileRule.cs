using EditionRegister.Domain.Integrity;

namespace EditionRegister.Store.Integrity;

/// <summary>A sentence that should be true of the register's file as a whole, under its permanent name.</summary>
public sealed record FileRule(string Name, string Sentence, string Basis, string Remedy)
{
    private const string Restore = "Keep this file as it is, compare it with the newest copy in the backups folder, and go on from the copy that agrees.";

    public static FileRule FileIsSound { get; } = new(
        "FileIsSound", "The database file can be read from end to end.", "SQLite's own integrity_check", Restore);

    public static FileRule SchemaIsAsShipped { get; } = new(
        "SchemaIsAsShipped", "Tables, indexes and guards are those the program shipped.", "the shipped schema scripts",
        "The next deed puts altered guards back by itself; for anything else go on from the newest copy in the backups folder.");

    public static FileRule LogbookIsUnbroken { get; } = new(
        "LogbookIsUnbroken", "The logbook runs from 1 without a gap, and every leaf and head is the hash of what stands there.", "RFC 6962 hash tree over the entries", Restore);

    public static FileRule SealedFactsAgree { get; } = new(
        "SealedFactsAgree", "Every sealed fact is the one its entry committed to, or was erased by an entry.", "SHA-256 commitments in the logbook", Restore);

    public static FileRule TablesAgreeWithLogbook { get; } = new(
        "TablesAgreeWithLogbook", "The tables say what the logbook says, row by row.", "the logbook folded from its first entry", Restore);

    public static FileRule PicturesAreOnFile { get; } = new(
        "PicturesAreOnFile", "Every picture on record lies in the images folder as it was taken in.", "the SHA-256 each picture is recorded under; a check compares lengths, and hashes every file with --pictures",
        "Put the original back into the images folder from a copy of the register's folder, or from the camera: the same bytes have the same name.");

    public static IReadOnlyList<FileRule> All { get; } = [FileIsSound, SchemaIsAsShipped, LogbookIsUnbroken, SealedFactsAgree, TablesAgreeWithLogbook, PicturesAreOnFile];

    internal Finding Broken(Subject subject, string message) => new(Name, Severity.Contradiction, subject, message, Basis, Remedy);
}
