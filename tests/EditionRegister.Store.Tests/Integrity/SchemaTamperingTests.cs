using EditionRegister.Domain;
using EditionRegister.Store.Sqlite;
using EditionRegister.Store.Tests.Histories;
using Microsoft.Data.Sqlite;

namespace EditionRegister.Store.Tests.Integrity;

public sealed class SchemaTamperingTests : IDisposable
{
    private readonly TempRegister _register = new();

    public static TheoryData<string> GuardNames => [.. Schema.Guards.Keys];

    public void Dispose() => _register.Dispose();

    [Fact]
    public void A_database_keeps_the_shipped_statements_word_for_word()
    {
        using SqliteConnection fresh = new("Data Source=:memory:");
        fresh.Open();

        Schema.Make(fresh);

        Assert.Equal(Schema.AsFound(fresh), Schema.AsShipped(Schema.Newest));
    }

    [Theory]
    [MemberData(nameof(GuardNames))]
    public void A_guard_taken_away_is_found_and_put_back_by_the_next_deed(string guard)
    {
        Change($"DROP TRIGGER {guard}");

        var findings = _register.Findings();
        new GeneratedHistory(_register.Store, guard).Add(1);

        var finding = Assert.Single(findings);
        Assert.Equal($"The trigger {guard} is missing.", finding.Message);
        Assert.Equal([Guards.PutBackAgain], _register.Said);
        Assert.Empty(_register.Findings());
    }

    [Fact]
    public void A_guard_made_toothless_is_found_and_put_back_and_a_strange_one_is_taken_away()
    {
        Change("DROP TRIGGER logbook_is_never_deleted; CREATE TRIGGER logbook_is_never_deleted BEFORE DELETE ON logbook WHEN 1 = 0 BEGIN SELECT RAISE(ABORT, 'no'); END;");
        Change("CREATE TRIGGER \"quiet \"\" one\" AFTER INSERT ON person BEGIN DELETE FROM sealed; END;");

        var findings = _register.Findings();
        new GeneratedHistory(_register.Store, "one person").Add(1);

        Assert.Equal(
            ["The trigger logbook_is_never_deleted was altered.", "The trigger quiet \" one is not ours."],
            findings.Select(finding => finding.Message));
        Assert.Equal([Guards.PutBackAgain], _register.Said);
        Assert.Empty(_register.Findings());
    }

    [Theory]
    [InlineData("CREATE TABLE other (a)", "The table other is not ours.")]
    [InlineData("CREATE VIEW other AS SELECT 1", "The view other is not ours.")]
    [InlineData("CREATE INDEX other ON person (name)", "The index other is not ours.")]
    [InlineData("DROP INDEX impression_number", "The index impression_number is missing.")]
    [InlineData("ALTER TABLE person ADD COLUMN other TEXT", "The table person was altered.")]
    [InlineData("PRAGMA user_version=0", "The file says it has form 0; the register says otherwise.")]
    [InlineData("PRAGMA user_version=1", "The file says it has form 1; the register says otherwise.")]
    [InlineData("PRAGMA user_version=2", "The file says it has form 2; the register says otherwise.")]
    [InlineData("DROP INDEX set_sheet_is_in_one_copy", "The index set_sheet_is_in_one_copy is missing.")]
    public void Anything_else_changed_in_the_schema_is_found(string sql, string message)
    {
        Change(sql);

        var finding = Assert.Single(_register.Findings());

        Assert.Equal("SchemaIsAsShipped", finding.Rule);
        Assert.Equal(message, finding.Message);
    }

    [Theory]
    [InlineData("PRAGMA user_version=5", "register-newer")]
    [InlineData("PRAGMA application_id=1", "register-cannot-open")]
    public void A_file_that_says_it_is_not_for_this_program_is_refused(string sql, string name)
    {
        Change(sql);

        var refused = Assert.Throws<RefusedException>(() => _register.Findings());

        Assert.Equal(name, refused.Name);
    }

    private void Change(string sql)
    {
        using var connection = _register.OpenUnguarded();
        connection.Run(sql);
    }
}
