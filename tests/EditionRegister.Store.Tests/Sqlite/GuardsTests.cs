using EditionRegister.Domain.Facts;
using EditionRegister.Store.Sqlite;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Sqlite;

/// <summary>What the database itself refuses, whoever asks: plain SQL through a connection as the program opens it.</summary>
public sealed class GuardsTests : IDisposable
{
    private const string Late = "guard: an edition never grows once a sheet is signed or has left";
    private const string Standing = "guard: only a kept sheet, or one held out as a proof, bears a number";
    private const string NotToBeHad = "guard: that number is void, never printed or elsewhere";
    private const string OneSheet = "guard: a code belongs to one sheet for ever";
    private const string Once = "guard: a code is given once";
    private const string OneMatrix = "guard: a code belongs to one matrix for ever";
    private const string MoreThanGiven = "guard: a pass takes in no more sheets than the one before gave";
    private const string Unbalanced = "CHECK constraint failed: sheets_in + added = sheets_out + spoiled + held_out";
    private const string ForeignKey = "FOREIGN KEY constraint failed";

    private readonly TempRegister _register = new();

    public GuardsTests() => SmallStudio.Furnish(_register.Store);

    public void Dispose() => _register.Dispose();

    [Theory]
    [InlineData("INSERT INTO logbook SELECT n + 2, at, root, batch, deed, body, leaf, head FROM logbook ORDER BY n DESC LIMIT 1", "guard: the logbook has no gap")]
    [InlineData("INSERT OR REPLACE INTO logbook SELECT n, at, root, batch, 'other', body, leaf, head FROM logbook WHERE n = 1", "guard: the logbook has no gap")]
    [InlineData("UPDATE logbook SET at = at", "guard: the logbook is never changed")]
    [InlineData("DELETE FROM logbook WHERE n = (SELECT max(n) FROM logbook)", "guard: nothing is deleted from the logbook")]
    [InlineData("UPDATE sealed SET salt = salt", "guard: a sealed fact is erased or kept, never changed")]
    public void The_logbook_and_what_it_seals_are_never_changed(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("INSERT INTO role (word, name) VALUES ('mentor', 'mentor')", "NOT NULL constraint failed: role.v")]
    [InlineData("UPDATE impression SET v = NULL", "NOT NULL constraint failed: impression.v")]
    [InlineData("UPDATE impression SET v = 99", "guard: a row names the entry that last wrote it")]
    public void No_row_is_without_the_entry_that_wrote_it(string sql, string message) => Refuses(sql, message);

    [Fact]
    public void No_table_takes_a_row_that_names_an_older_entry()
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);

        foreach (var table in FactCatalogue.Tables)
        {
            foreach (var sql in new[] { $"UPDATE {table.Name} SET v = 1 WHERE id = (SELECT max(id) FROM {table.Name})", $"INSERT INTO {table.Name} (id, v) VALUES (999999, 1)" })
            {
                var refused = Record.Exception(() => connection.Run(sql));

                Assert.Equal(
                    $"{sql}: SQLite Error 19: 'guard: a row names the entry that last wrote it'.",
                    $"{sql}: {refused?.Message ?? "not refused"}");
            }
        }
    }

    [Theory]
    [InlineData("UPDATE impression SET numbering = 1, number = 1, v = @v WHERE id = 2", "UNIQUE constraint failed: impression.numbering, impression.number")]
    [InlineData("UPDATE impression SET numbering = 1, number = 4, v = @v WHERE id = 2", ForeignKey)]
    [InlineData("INSERT INTO number (numbering, ordinal, fate, v) VALUES (3, 3, 'open', @v)", "guard: a number lies within its size")]
    [InlineData("INSERT INTO number (numbering, ordinal, fate, v) VALUES (3, 1, 'open', @v)", "UNIQUE constraint failed: number.numbering, number.ordinal")]
    [InlineData("UPDATE number SET ordinal = 3, v = @v WHERE id = 301", "guard: a number")]
    [InlineData("UPDATE number SET numbering = 2, ordinal = 2, v = @v WHERE id = 301", "guard: a number keeps its place in its numbering")]
    public void A_number_is_given_once_and_lies_within_its_size(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("UPDATE impression SET numbering = 1, number = 2, v = @v WHERE id = 3", Standing)]
    [InlineData("UPDATE impression SET numbering = 1, number = 2, v = @v WHERE id = 4", Standing)]
    [InlineData("UPDATE impression SET standing = 'left-out', v = @v WHERE id = 1", Standing)]
    [InlineData("INSERT INTO impression (run, ordinal, code, standing, numbering, number, signed, for_sale, v) VALUES (1, 9, '7KQ4M2X9', 'spare', 1, 2, 'no', 'no', @v)", Standing)]
    [InlineData("UPDATE impression SET numbering = 1, number = 3, v = @v WHERE id = 2", NotToBeHad)]
    [InlineData("INSERT INTO impression (run, ordinal, code, standing, numbering, number, signed, for_sale, v) VALUES (1, 9, '7KQ4M2X9', 'kept', 1, 3, 'no', 'no', @v)", NotToBeHad)]
    public void Only_a_kept_sheet_bears_a_number_and_only_one_that_is_to_be_had(string sql, string message) => Refuses(sql, message);

    [Fact]
    public void A_sheet_held_out_bears_the_number_of_a_proof()
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);

        var changed = connection.Run("UPDATE impression SET numbering = 2, number = 1, v = (SELECT max(n) FROM logbook) WHERE id = 4");

        Assert.Equal(1, changed);
    }

    [Theory]
    [InlineData("INSERT INTO number (numbering, ordinal, fate, v) VALUES (2, 2, 'open', @v)", Late)]
    [InlineData("UPDATE numbering SET size = 4, v = @v WHERE id = 1", Late)]
    [InlineData("UPDATE numbering SET size = 4, v = @v WHERE id = 2", Late)]
    [InlineData("UPDATE numbering SET size = NULL, size_state = 'open', v = @v WHERE id = 1", Late)]
    public void An_edition_never_grows_after_the_first_signing(string sql, string message) => Refuses(sql, message);

    [Fact]
    public void An_edition_never_grows_after_the_first_leaving()
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);
        connection.Run("UPDATE impression SET signed = 'no', v = (SELECT max(n) FROM logbook)");

        Refuses("UPDATE numbering SET size = 4, v = @v WHERE id = 1", Late);
    }

    [Fact]
    public void Before_that_a_size_may_be_mended()
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);

        var changed = connection.Run("UPDATE numbering SET size = 4, v = (SELECT max(n) FROM logbook) WHERE id = 3");
        changed += connection.Run("INSERT INTO number (numbering, ordinal, fate, v) VALUES (3, 2, 'open', (SELECT max(n) FROM logbook))");

        Assert.Equal(2, changed);
    }

    [Theory]
    [InlineData("INSERT INTO whereabouts (impression, ordinal, kind, from_state, from_place, to_state, v) VALUES (1, 3, 'returned', 'placed', 2, 'unknown', @v)", ForeignKey)]
    [InlineData("INSERT INTO whereabouts (impression, ordinal, kind, from_state, from_holder, to_state, v) VALUES (1, 4, 'returned', 'with', 2, 'unknown', @v)", ForeignKey)]
    [InlineData("INSERT INTO whereabouts (impression, ordinal, kind, to_state, v) VALUES (1, 3, 'returned', 'unknown', @v)", "CHECK constraint failed: (ordinal = 1) = (from_state IS NULL)")]
    [InlineData("UPDATE whereabouts SET to_place = 1, v = @v WHERE id = 1", ForeignKey)]
    [InlineData("DELETE FROM whereabouts WHERE id = 1", ForeignKey)]
    [InlineData("INSERT INTO ownership (impression, ordinal, kind, from_state, from_owner, to_state, to_owner, v) VALUES (1, 3, 'sold', 'known', 1, 'known', 2, @v)", ForeignKey)]
    [InlineData("UPDATE ownership SET to_owner = 2, v = @v WHERE id = 1", ForeignKey)]
    [InlineData("DELETE FROM ownership WHERE id = 1", ForeignKey)]
    public void A_chain_does_not_break(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("UPDATE code SET sheet = 2, v = @v WHERE id = 1", OneSheet)]
    [InlineData("UPDATE code SET code = '7KQ4M2X9', v = @v WHERE id = 1", OneSheet)]
    [InlineData("DELETE FROM code WHERE id = 1", OneSheet)]
    [InlineData("INSERT INTO code (code, sheet, v) VALUES ('7KQ4M2X3', 2, @v)", OneSheet)]
    [InlineData("PRAGMA recursive_triggers=OFF; INSERT OR REPLACE INTO code (code, sheet, v) VALUES ('7KQ4M2X3', 2, @v)", OneSheet)]
    [InlineData("UPDATE impression SET code = '7KQ4M2X4', v = @v WHERE id = 1", "UNIQUE constraint failed: impression.code")]
    [InlineData("UPDATE impression SET code = '7KQ4M2X9', v = @v WHERE id = 1", ForeignKey)]
    public void A_code_is_never_used_for_another_sheet(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("INSERT INTO matrix_code (code, matrix, v) VALUES ('7KQ4M2X3', 1, @v)", Once)]
    [InlineData("INSERT INTO matrix_code (code, matrix, v) VALUES ('7KQ4M2XA', 1, @v)", Once)]
    [InlineData("PRAGMA recursive_triggers=OFF; INSERT OR REPLACE INTO matrix_code (code, matrix, v) VALUES ('7KQ4M2XA', 1, @v)", Once)]
    [InlineData("INSERT INTO code (code, sheet, v) VALUES ('7KQ4M2XA', 9, @v)", Once)]
    [InlineData("UPDATE matrix_code SET matrix = 2, v = @v", OneMatrix)]
    [InlineData("UPDATE matrix_code SET code = '7KQ4M2XB', v = @v", OneMatrix)]
    [InlineData("DELETE FROM matrix_code", OneMatrix)]
    public void A_code_is_given_once_whether_to_a_sheet_or_a_matrix(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("INSERT INTO pass (run, ordinal, kind, side, reach, sheets_in, v) VALUES (1, 2, 'printed', 'recto', 'all', 9, @v)", MoreThanGiven)]
    [InlineData("INSERT INTO pass (run, ordinal, kind, side, reach, sheets_in, v) VALUES (1, 2, 'printed', 'recto', 'some', 9, @v)", MoreThanGiven)]
    [InlineData("INSERT INTO pass (run, ordinal, kind, side, reach, sheets_in, v) VALUES (1, 2, 'printed', 'recto', 'all', 8, @v); UPDATE pass SET sheets_in = 9, v = @v WHERE ordinal = 2", MoreThanGiven)]
    [InlineData("UPDATE pass SET sheets_out = 9, v = @v", Unbalanced)]
    [InlineData("UPDATE pass SET added = 1, v = @v", Unbalanced)]
    [InlineData("UPDATE pass SET spoiled = 0, v = @v", Unbalanced)]
    [InlineData("INSERT INTO pass (run, ordinal, kind, side, reach, sheets_in, added, sheets_out, spoiled, held_out, v) VALUES (1, 2, 'printed', 'recto', 'all', 8, 0, 8, 1, 0, @v)", Unbalanced)]
    public void A_pass_balances_and_takes_no_more_sheets_than_it_was_given(string sql, string message) => Refuses(sql, message);

    [Fact]
    public void A_pass_takes_what_it_was_given_and_where_nobody_counted_or_only_some_went_through_nothing_is_asked()
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);

        foreach (var (ordinal, reach, taken) in new[] { (2, "some", "8"), (3, "all", "99"), (4, "all", "NULL"), (5, "all", "40") })
        {
            var made = connection.Run(
                $"INSERT INTO pass (run, ordinal, kind, side, reach, sheets_in, v) VALUES (1, {ordinal}, 'printed', 'recto', '{reach}', {taken}, (SELECT max(n) FROM logbook))");

            Assert.Equal(1, made);
        }
    }

    [Theory]
    [InlineData("INSERT INTO set_sheet (copy, sheet, standing, v) VALUES (1, 3, 'in', @v)", "UNIQUE constraint failed: set_sheet.sheet")]
    [InlineData("INSERT INTO set_sheet (copy, sheet, standing, v) VALUES (1, 3, 'taken-out', @v); UPDATE set_sheet SET standing = 'in', v = @v", "UNIQUE constraint failed: set_sheet.sheet")]
    [InlineData("INSERT INTO set_sheet (copy, sheet, standing, v) VALUES (2, 2, 'in', @v)", "CHECK constraint failed: copy <> sheet")]
    [InlineData("INSERT INTO reservation (impression, standing, v) VALUES (2, 'standing', @v)", "UNIQUE constraint failed: reservation.impression")]
    [InlineData("INSERT INTO reservation (impression, standing, v) VALUES (2, 'lifted', @v); UPDATE reservation SET standing = 'standing', v = @v", "UNIQUE constraint failed: reservation.impression")]
    [InlineData("INSERT INTO sheet_link (impression, kind, other, v) VALUES (4, 'ghost-of', 2, @v)", "UNIQUE constraint failed: sheet_link.impression, sheet_link.kind")]
    [InlineData("INSERT INTO grade (impression, against, v) VALUES (1, 'unknown', @v)", "UNIQUE constraint failed: grade.impression")]
    [InlineData("UPDATE grade SET inking = 6, v = @v", "CHECK constraint failed: inking BETWEEN 1 AND 5")]
    [InlineData("UPDATE picture SET sha256 = 'short', v = @v", "CHECK constraint failed: length(sha256) = 64")]
    [InlineData("UPDATE picture SET media = 'image/svg+xml', v = @v", "CHECK constraint failed: media IN")]
    [InlineData("UPDATE entitlement SET last = 0, v = @v", "CHECK constraint failed: last >= first")]
    [InlineData("INSERT INTO condition_remark (report, ordinal, term, v) VALUES (1, 2, 'sad', @v)", ForeignKey)]
    [InlineData("UPDATE print_run SET posthumous = 'perhaps', v = @v", "CHECK constraint failed: posthumous IN")]
    [InlineData("UPDATE impression SET after_pass = 99, v = @v WHERE id = 1", ForeignKey)]
    public void A_sheet_lies_in_one_copy_and_is_put_by_once(string sql, string message) => Refuses(sql, message);

    [Theory]
    [InlineData("INSERT INTO document (kind, impression, serial, issued, standing, v) VALUES ('certificate', 1, 'C-0002', '2026', 'valid', @v)", "UNIQUE constraint failed: document.impression")]
    [InlineData("UPDATE impression SET standing = 'sold', v = @v WHERE id = 2", "CHECK constraint failed: standing IN")]
    [InlineData("UPDATE matrix SET fate = 'eaten', v = @v; INSERT INTO matrix (work, what, reduction, fate, v) VALUES (1, 'block', 'yes', 'eaten', @v)", "CHECK constraint failed: fate IN")]
    [InlineData("UPDATE numbering SET kind = 'mine', v = @v WHERE id = 3", ForeignKey)]
    [InlineData("UPDATE impression SET asking = 100, v = @v WHERE id = 2", "CHECK constraint failed: (asking IS NULL) = (asking_currency IS NULL)")]
    [InlineData("UPDATE ownership SET price = 100, v = @v WHERE id = 2", "CHECK constraint failed: currency IS NOT NULL")]
    [InlineData("UPDATE ownership SET net = 100, v = @v WHERE id = 2", "CHECK constraint failed: currency IS NOT NULL")]
    [InlineData("UPDATE impression SET number = 'one', v = @v WHERE id = 1", "cannot store TEXT value in INTEGER column impression.number")]
    [InlineData("UPDATE show SET kind = 'party', v = @v", "CHECK constraint failed: kind IN")]
    [InlineData("UPDATE show_impression SET standing = 'sold', v = @v", "CHECK constraint failed: standing IN")]
    [InlineData("INSERT INTO show_impression (show, impression, ordinal, standing, v) VALUES (1, 1, 2, 'listed', @v)", "UNIQUE constraint failed: show_impression.show, show_impression.impression")]
    [InlineData("INSERT INTO show_impression (show, impression, ordinal, standing, v) VALUES (1, 99, 2, 'listed', @v)", ForeignKey)]
    [InlineData("UPDATE accepted_finding SET withdrawn = 'perhaps', v = @v", "CHECK constraint failed: withdrawn IN")]
    public void Certificates_closed_lists_money_and_kinds_of_value_hold(string sql, string message) => Refuses(sql, message);

    private void Refuses(string sql, string message)
    {
        using var connection = SqliteFile.OpenToWrite(_register.Folder.Database);

        var refused = Assert.Throws<SqliteException>(() => connection.Run(sql.Replace("@v", "(SELECT max(n) FROM logbook)", StringComparison.Ordinal)));

        Assert.Equal(19, refused.SqliteErrorCode);
        Assert.Contains(message, refused.Message, StringComparison.Ordinal);
    }
}
