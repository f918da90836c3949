using EditionRegister.Domain.Codes;

namespace EditionRegister.Domain.Tests.Codes;

/// <summary>What a slip of the pen or the hand does to a code. The proofs cover all codes there are, not a sample.</summary>
public sealed class MistypedCodeTests
{
    private const string All = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const int BodyLength = 7;
    private const int States = 37;

    /// <summary>
    /// A code is refused unless the checksum ends in one value. One wrong character puts the checksum into another state
    /// (first proof), every character after it keeps different states different (second), and a code's end tells
    /// different states apart (third): so no single wrong character, at any place of any code, can pass.
    /// </summary>
    [Fact]
    public void Every_single_wrong_character_is_refused_in_every_code_there_is()
    {
        foreach (var state in Enumerable.Range(1, States - 1))
        {
            Assert.Equal(All.Length, All.Select(c => Step(state, c)).Distinct().Count());
        }

        foreach (var character in All)
        {
            Assert.Equal(States - 1, Enumerable.Range(1, States - 1).Select(state => Step(state, character)).Distinct().Count());
        }

        Assert.Equal(States - 1, Enumerable.Range(1, States - 1).Select(CheckAfter).Distinct().Count());
    }

    [Fact]
    public void Every_single_wrong_character_is_refused_by_the_reader_in_drawn_codes()
    {
        Random random = new(7064);
        var tried = 0;

        for (var i = 0; i < 2_000; i++)
        {
            var code = RegisterCode.Draw(random.Next).Text;

            foreach (var (place, wrong) in from place in Enumerable.Range(0, code.Length)
                                           from wrong in All
                                           where wrong != code[place]
                                           select (place, wrong))
            {
                var mistyped = code[..place] + wrong + code[(place + 1)..];
                Assert.False(RegisterCode.TryParse(mistyped, out _), $"{code} was mistyped as {mistyped}, and read.");
                tried++;
            }
        }

        Assert.Equal(2_000 * 8 * 35, tried);
    }

    /// <summary>Counted over all codes and all places where two different neighbours can be swapped.</summary>
    [Fact]
    public void The_exact_share_of_swapped_neighbours_that_is_refused_is_known()
    {
        var (swaps, missed) = CountSwaps();

        var share = 1 - ((double)missed / swaps);

        TestContext.Current.TestOutputHelper?.WriteLine($"{swaps - missed} of {swaps} swaps of neighbours are refused: {share:P4}");
        Assert.Equal(207_112_867_801, swaps);
        Assert.Equal(244_891_784, missed);
        Assert.Equal(0.998818, share, tolerance: 0.0000005);
    }

    [Fact]
    public void The_reader_refuses_swaps_in_the_share_that_was_counted()
    {
        var (swaps, missed) = CountSwaps();
        Random random = new(3736);
        var (tried, read) = (0, 0);

        for (var i = 0; i < 40_000; i++)
        {
            var code = RegisterCode.Draw(random.Next).Text;
            var place = random.Next(code.Length - 1);

            if (code[place] != code[place + 1])
            {
                tried++;
                read += RegisterCode.TryParse(Swapped(code, place), out _) ? 1 : 0;
            }
        }

        Assert.Equal((double)missed / swaps, (double)read / tried, tolerance: 0.0007);
    }

    private static (long Swaps, long Missed) CountSwaps()
    {
        var before = Prefixes();
        var after = Endings();
        long swaps = 0, missed = 0;

        foreach (var (place, state, a, b) in from place in Enumerable.Range(0, BodyLength - 1)
                                             from state in Enumerable.Range(1, States - 1)
                                             from a in RegisterCode.Alphabet
                                             from b in RegisterCode.Alphabet
                                             where a != b
                                             select (place, state, a, b))
        {
            var (right, swapped) = (Step(Step(state, a), b), Step(Step(state, b), a));
            var codes = before[place][state] * after[place + 2][right];
            swaps += codes;
            missed += right == swapped ? codes : 0;
        }

        foreach (var (state, a) in from state in Enumerable.Range(1, States - 1) from a in RegisterCode.Alphabet select (state, a))
        {
            var check = CheckAfter(Step(state, a));

            if (check != a && RegisterCode.Alphabet.Contains(check, StringComparison.Ordinal))
            {
                swaps += before[BodyLength - 1][state];
                missed += CheckAfter(Step(state, check)) == a ? before[BodyLength - 1][state] : 0;
            }
        }

        return (swaps, missed);
    }

    // How many ways lead to each state before the character at a place.
    private static long[][] Prefixes()
    {
        var ways = Enumerable.Range(0, BodyLength + 1).Select(_ => new long[States]).ToArray();
        ways[0][States - 1] = 1;

        for (var place = 0; place < BodyLength; place++)
        {
            foreach (var (state, c) in from state in Enumerable.Range(1, States - 1) from c in RegisterCode.Alphabet select (state, c))
            {
                ways[place + 1][Step(state, c)] += ways[place][state];
            }
        }

        return ways;
    }

    // How many ways lead from each state before a place to the end of a code that can be drawn.
    private static long[][] Endings()
    {
        var ways = Enumerable.Range(0, BodyLength + 1).Select(_ => new long[States]).ToArray();

        for (var state = 1; state < States; state++)
        {
            ways[BodyLength][state] = RegisterCode.Alphabet.Contains(CheckAfter(state), StringComparison.Ordinal) ? 1 : 0;
        }

        for (var place = BodyLength - 1; place >= 0; place--)
        {
            foreach (var (state, c) in from state in Enumerable.Range(1, States - 1) from c in RegisterCode.Alphabet select (state, c))
            {
                ways[place][state] += ways[place + 1][Step(state, c)];
            }
        }

        return ways;
    }

    // The recursion of the standard, written a second time; the test beside it holds the two together.
    private static int Step(int state, char c)
    {
        var sum = (state + All.IndexOf(c, StringComparison.Ordinal)) % 36;

        return (sum == 0 ? 36 : sum) * 2 % 37;
    }

    private static char CheckAfter(int state) => All[(37 - state) % 36];

    [Fact]
    public void The_recursion_used_for_counting_is_the_one_the_codes_use()
    {
        Random random = new(36);

        for (var i = 0; i < 1_000; i++)
        {
            var code = RegisterCode.Draw(random.Next).Text;

            Assert.Equal(code[7], CheckAfter(code[..7].Aggregate(36, Step)));
        }
    }

    private static string Swapped(string code, int place) =>
        $"{code[..place]}{code[place + 1]}{code[place]}{code[(place + 2)..]}";
}
