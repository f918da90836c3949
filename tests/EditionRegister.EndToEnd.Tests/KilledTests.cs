using System.Text;
using EditionRegister.Store;
using EditionRegister.UseCases;

namespace EditionRegister.EndToEnd.Tests;

public sealed class KilledTests : IDisposable
{
    private const int Rows = 4_000;

    private readonly RealProgram _edreg = new();

    public void Dispose() => _edreg.Dispose();

    [Fact]
    public void Killed_while_it_reads_a_file_in_a_register_has_all_of_it_or_none()
    {
        StringBuilder file = new("title,maker,number\n");

        for (var i = 1; i <= Rows; i++)
        {
            file.Append(System.Globalization.CultureInfo.InvariantCulture, $"Study {i / 40},Mira Tolland,{(i % 40) + 1}/40\n");
        }

        File.WriteAllText(_edreg.In("list.csv"), file.ToString());
        HashSet<int> seen = [];

        // From just after the start to well after the end: some die before, some in the middle of it, some not at all.
        foreach (var milliseconds in new[] { 300, 600, 800, 1_000, 1_300, 1_700, 2_500 })
        {
            var name = FormattableString.Invariant($"studio{milliseconds}");
            _edreg.Do("new", name);
            using (var reading = _edreg.Start("read", "list.csv", "--go", "--register", name))
            {
                Thread.Sleep(milliseconds);
                reading.Kill();
                RealProgram.Finish(reading);
            }

            var register = Register.Open(new RegisterFolder(_edreg.In(name)));
            var count = register.LookAround.Works().Sum(work => work.Impressions.Count);
            Assert.True(count is 0 or Rows, $"Killed after {milliseconds} ms, {count} of {Rows} rows were left.");
            Assert.Empty(register.CheckRegister.Run());
            seen.Add(count);
        }

        Assert.Contains(0, seen);
    }

    [Fact]
    public void Killed_while_it_upgrades_a_register_leaves_the_old_form_or_the_new_one()
    {
        var older = Path.Combine(Clone.Folder, "tests", "EditionRegister.Store.Tests", "fixtures", "register-0001.db");

        foreach (var milliseconds in new[] { 100, 200, 250, 300, 350, 400, 500, 2_500 })
        {
            var name = FormattableString.Invariant($"upgraded{milliseconds}");
            Directory.CreateDirectory(_edreg.In(name));
            File.Copy(older, _edreg.In(name, "register.db"));
            using (var making = _edreg.Start("shows", "make", "Open studio", "--register", name))
            {
                Thread.Sleep(milliseconds);
                making.Kill();
                RealProgram.Finish(making);
            }

            var register = Register.Open(new RegisterFolder(_edreg.In(name)));
            var (entries, shows) = (register.LookAround.Head().N, register.LookAround.Shows().Count);
            Assert.True((entries, shows) is (82, 0) or (84, 1), $"Killed after {milliseconds} ms, {entries} entries and {shows} shows were left.");
            Assert.Empty(register.CheckRegister.Run());

            if (shows == 1)
            {
                Assert.NotEmpty(Directory.GetFiles(register.Folder.Backups, "form-1-*.db"));
            }
        }
    }
}
