using EditionRegister.Domain.Integrity;

namespace EditionRegister.Domain.Tests.Integrity;

public sealed class FindingHandlesTests
{
    // SHA-256("abc") begins ba7816bf (FIPS 180-4 examples): 10111 01001 11100 00001 01101 01111, counted into the alphabet by hand.
    [Fact]
    public void A_handle_is_the_beginning_of_the_hash_five_bits_a_letter() => Assert.Equal("RBW3FH", new FindingHandles().Give("abc"));

    [Fact]
    public void Two_that_would_be_called_the_same_are_told_apart_and_stay_so()
    {
        Dictionary<string, string> met = [];
        var (first, second) = ("", "");

        for (var i = 0; second.Length == 0 && i < 1_000_000; i++)
        {
            var words = FormattableString.Invariant($"finding {i}");
            (first, second) = met.TryAdd(new FindingHandles().Give(words), words) ? ("", "") : (met[new FindingHandles().Give(words)], words);
        }

        FindingHandles handles = new();
        Assert.Equal((6, 7), (handles.Give(first).Length, handles.Give(second).Length));
        Assert.Equal((6, 7), (handles.Give(first).Length, handles.Give(second).Length));
        Assert.StartsWith(handles.Give(first), handles.Give(second), StringComparison.Ordinal);
    }

    [Fact]
    public void Any_part_of_a_finding_makes_another_of_it_except_how_grave_it_is_and_what_to_do()
    {
        Finding finding = new("SheetsBalance", Severity.Query, new Subject("work", 1, "“Harbour”"), "One is missing.", "arithmetic", "Count again.");

        var words = FindingHandles.WordsOf(finding);

        Assert.Equal(words, FindingHandles.WordsOf(finding with { Severity = Severity.Note, Remedy = "Wait.", Basis = "custom", Subject = finding.Subject with { Name = "“Heron”" } }));
        Assert.Equal(5, new[]
        {
            finding, finding with { Rule = "TotalsMatch" }, finding with { Subject = finding.Subject with { Kind = "edition" } },
            finding with { Subject = finding.Subject with { Id = 11 } }, finding with { Message = "Two are missing." },
        }.Select(FindingHandles.WordsOf).Distinct().Count());
    }
}
