using System.Text.Json;
using EditionRegister.Domain.Facts;
using EditionRegister.Store.Reading;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.UseCases.Tests.Looking;

public sealed class LogbookPageTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _demo;

    public LogbookPageTests()
    {
        _demo = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("demo"))));
        Register.Open(_demo.Folder, by: 2).EditWork.Run(1, null, null, "linocut, two blocks");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Newest_first_with_what_was_done_in_words()
    {
        var newest = _demo.LookAround.LogbookPage(new LogbookWanted { Take = 1 });

        var entry = Assert.Single(newest.Page);
        Assert.Equal(("edit-work", "work corrected", "work/1", 2L, (long?)null), (entry.Deed, entry.DeedInWords, entry.Root, entry.By!.Value, entry.Batch));
        Assert.Equal($"“{_demo.LookAround.Work(1).Title}” by {_demo.LookAround.Work(1).ShownMaker}", entry.Subject);
        Assert.Equal(_demo.LookAround.Book().NameOf(2), entry.ByName);
        Assert.Equal((entry.N, entry.N), (newest.Next!.Value, newest.All));
    }

    [Fact]
    public void Every_deed_of_the_demo_has_words_of_its_own()
    {
        var page = All(new LogbookWanted());

        Assert.All(page, entry => Assert.NotEqual(entry.Deed.Replace('-', ' '), entry.DeedInWords));
        Assert.Equal("pulls sorted", page.First(entry => entry.Deed == "sort-pulls").DeedInWords);
        Assert.Equal("send out", DeedInWords.Of("send-out"));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(1_000)]
    public void Every_filter_keeps_what_a_reader_keeps_who_reads_it_all_and_pages_join(int take)
    {
        var all = _demo.LookAround.Logbook(int.MaxValue);
        var days = all.Select(line => line.At[..10]).Distinct().ToList();
        var (from, to) = (Day(days[days.Count / 2]), Day(days[1]));

        Assert.Equal(Numbers(all, _ => true), All(new LogbookWanted { Take = take }).Select(entry => entry.N));
        Assert.Equal(Numbers(all, line => line.Root == "work/1"), All(new LogbookWanted { Take = take, Root = "work/1" }).Select(entry => entry.N));
        Assert.Equal(Numbers(all, line => By(line) == 2), All(new LogbookWanted { Take = take, By = 2 }).Select(entry => entry.N));
        Assert.Equal(
            Numbers(all, line => string.CompareOrdinal(line.At[..10], days[days.Count / 2]) >= 0 && string.CompareOrdinal(line.At[..10], days[1]) <= 0),
            All(new LogbookWanted { Take = take, From = from, To = to }).Select(entry => entry.N));
        Assert.Empty(All(new LogbookWanted { Take = take, From = to, To = from }));
        Assert.Empty(All(new LogbookWanted { Take = take, To = new DateOnly(1999, 1, 1) }));
        Assert.Empty(All(new LogbookWanted { Take = take, By = 999 }));
    }

    [Theory]
    [InlineData("harbour", "work/1")]
    [InlineData("TÖLLAND harb", "work/1")]
    [InlineData("tolland", "person/1")]
    [InlineData("chest drawer", "place/")]
    [InlineData("register", "register/1")]
    public void Words_find_entries_by_what_they_are_on(string text, string root)
    {
        var found = All(new LogbookWanted { Text = text });

        Assert.Contains(found, entry => entry.Root.StartsWith(root, StringComparison.Ordinal));
        Assert.All(found, entry => Assert.All(text.Split(' '), word => Assert.Contains(Domain.Text.SearchText.Fold(word), Domain.Text.SearchText.Fold(entry.Subject), StringComparison.Ordinal)));
        Assert.Equal(All(new LogbookWanted()).Where(entry => found.Any(one => one.Subject == entry.Subject)), found);
    }

    [Fact]
    public void An_entry_whole_says_every_fact_it_sets()
    {
        var line = _demo.LookAround.Logbook(int.MaxValue).First(entry => entry.Deed == "record-work");

        var seen = _demo.LookAround.EntryWhole(line.N)!;

        using var body = JsonDocument.Parse(line.Body);
        var open = body.RootElement.GetProperty("set").EnumerateArray().SelectMany(set => set[2].EnumerateObject()).Count();
        Assert.Equal(open, seen.Facts.Count(fact => !fact.Value.StartsWith("(sealed: ", StringComparison.Ordinal)));
        var title = _demo.LookAround.Work(line.Root == "work/1" ? 1 : long.Parse(line.Root["work/".Length..], null)).Title;
        Assert.Contains(seen.Facts, fact => fact == new EntryFactSeen("work", fact.Id, "title", $"(sealed: {title})"));
        Assert.Contains(seen.Facts, fact => fact is { Table: "work role", Fact: "role", Value: "maker" });
        Assert.Equal((line.Head.Head, null), (seen.Head, seen.Damage));
        Assert.Equal(Convert.ToHexStringLower(Store.Proof.MerkleTree.LeafHash(System.Text.Encoding.UTF8.GetBytes(line.Body))), seen.Leaf);
        Assert.Null(_demo.LookAround.EntryWhole(99_999));
        Assert.Null(_demo.LookAround.EntryWhole(0));
    }

    [Fact]
    public void Entries_of_one_batch_know_each_other()
    {
        _demo.ReadIn.Run(WithFile("title,maker,number\nNet,Ada Voe,1/3\nTide,Ada Voe,1/2\n"), []);
        var newest = _demo.LookAround.LogbookPage(new LogbookWanted { Take = 1 }).Page[0];

        var seen = _demo.LookAround.EntryWhole(newest.N)!;

        var same = _demo.LookAround.Logbook(int.MaxValue).Where(line => line.Batch == newest.Batch).Select(line => line.N).Order().ToList();
        Assert.Equal(same, seen.Mates.Select(mate => mate.N));
        Assert.Equal(same.Count, seen.BatchSize);
        Assert.Contains("the file “list.csv”", seen.Mates[0].Subject, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_erased_is_said_to_be_erased()
    {
        var recorded = _demo.LookAround.Logbook(int.MaxValue).Last(line => line.Root == "person/2").N;
        new RegisterStore(_demo.Folder, Surroundings.Usual).Write("erase", writing =>
        {
            writing.On(Root.Person(2)).Set("person", 2, ("erased", "yes"));
            writing.On(Root.Person(2)).Erase("person", 2);

            return true;
        });

        var then = _demo.LookAround.EntryWhole(recorded)!;
        var erasing = _demo.LookAround.LogbookPage(new LogbookWanted { Take = 1 }).Page[0];

        Assert.Contains(new EntryFactSeen("person", 2, "sealed facts", "(erased)"), then.Facts);
        Assert.Equal("(erased)", then.Entry.Subject);
        Assert.Contains(_demo.LookAround.EntryWhole(erasing.N)!.Facts, fact => fact.Table == "logbook" && fact.Id == recorded);
    }

    private static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<long> Numbers(IReadOnlyList<LogbookLine> all, Func<LogbookLine, bool> which) => all.Where(which).Select(line => line.N);

    private static long? By(LogbookLine line)
    {
        using var body = JsonDocument.Parse(line.Body);
        var by = body.RootElement.GetProperty("by");

        return by.ValueKind == JsonValueKind.Null ? null : by.GetInt64();
    }

    private string WithFile(string text)
    {
        File.WriteAllText(_folder.In("list.csv"), text);

        return _folder.In("list.csv");
    }

    private List<EntryListed> All(LogbookWanted wanted)
    {
        List<EntryListed> all = [];

        for (long? before = long.MaxValue; before is not null;)
        {
            var seen = _demo.LookAround.LogbookPage(wanted with { Before = before });
            all.AddRange(seen.Page);
            before = seen.Next;
        }

        return all;
    }
}
