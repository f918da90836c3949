using System.Text.RegularExpressions;
using EditionRegister.Domain;

namespace EditionRegister.UseCases.Tests.Refusals;

/// <summary>Every refusal there is: provoked as a person would meet it, and its sentence approved whole.</summary>
public sealed partial class RefusalsTests(RefusalsTests.Provoked provoked) : IClassFixture<RefusalsTests.Provoked>
{
    [Fact]
    public void Everything_provoked_is_refused_under_its_name() =>
        Assert.Empty(provoked.All.Where(one => one.Refusal?.Name != one.Name).Select(one => $"{one.Name}: {(object?)one.Refusal ?? "not refused"}"));

    [Fact]
    public void Every_refusal_of_the_source_is_provoked_and_none_is_left_over() =>
        Assert.Equal(RefusalNames.InSource.Order(StringComparer.Ordinal), provoked.All.Select(one => one.Name).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_sentence_is_the_approved_one() => Approved.Is(
        string.Join('\n', provoked.All
            .OrderBy(one => one.Name, StringComparer.Ordinal)
            .GroupBy(one => one.Name)
            .Select(same => $"{same.Key}\n{string.Concat(same.Select(one => $"  {one.Text.Replace("\n", "\n  ", StringComparison.Ordinal)}\n").Distinct())}")),
        "EditionRegister.UseCases.Tests", "Refusals", "approved.txt");

    [Fact]
    public void Every_text_is_whole_sentences_that_end_in_a_way_out()
    {
        Assert.All(provoked.All, one =>
        {
            var sentences = one.Text.Split('\n')[0];

            Assert.True(sentences.EndsWith('.'), one.Text);
            Assert.DoesNotContain("..", sentences.Replace("...", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.DoesNotContain("  ", sentences, StringComparison.Ordinal);
            Assert.Matches(WhatDidNotHappen(), sentences);
            Assert.DoesNotMatch(WhatDidNotHappen(), LastSentence().Match(sentences).Value);
        });
    }

    [Fact]
    public void Every_command_and_option_that_a_text_names_is_there()
    {
        Assert.All(provoked.All, one =>
        {
            foreach (Match named in Command().Matches(one.Text))
            {
                Assert.True(ProgramCommands.Knows(named.Groups["command"].Value), $"{one.Name}: {named.Value}");
            }

            foreach (Match named in Option().Matches(one.Text))
            {
                Assert.True(ProgramCommands.Options.Contains(named.Value), $"{one.Name}: {named.Value}");
            }
        });
    }

    [GeneratedRegex("[Nn]othing was (changed|written|read in)|was not read( in)?\\b|No (certificate|document|labels|register) (was|were) |so (no impressions|none) were chosen|No register was made|What stood there before still stands|has no entry")]
    private static partial Regex WhatDidNotHappen();

    [GeneratedRegex("(?<=[.:!?] )[A-Z`“][^.]*(\\.(?! [A-Z`“])[^.]*)*$")]
    private static partial Regex LastSentence();

    [GeneratedRegex("[`“]edreg (?<command>[a-z]+(?:-[a-z]+)*(?: [a-z]+(?:-[a-z]+)*)?)")]
    private static partial Regex Command();

    [GeneratedRegex("(?<![\\w-])--[a-z][a-z-]*")]
    private static partial Regex Option();

    /// <summary>One provocation, and what came of it.</summary>
    public sealed record Answer(string Name, RefusedException? Refusal, string Text);

    public sealed class Provoked
    {
        public IReadOnlyList<Answer> All { get; } =
        [
            .. new[]
            {
                PeopleProvocations.All, WorkProvocations.All, MatrixProvocations.All, PassProvocations.All, PlanProvocations.All, EditionProvocations.All, KindProvocations.All, ImpressionProvocations.All, ChainProvocations.All, MoveProvocations.All, ReadingInProvocations.All,
                PaperProvocations.All, PictureProvocations.All, ShowProvocations.All, StockProvocations.All, AcceptanceProvocations.All, SortingProvocations.All, SetProvocations.All, RegisterProvocations.All, CommandProvocations.All, Unprovoked.All,
            }.SelectMany(subject => subject).Select(Provoke),
        ];

        private static Answer Provoke(Provocation provocation)
        {
            using Studio studio = new();

            try
            {
                provocation.Do(studio);

                return new Answer(provocation.Name, null, "");
            }
            catch (RefusedException refusal)
            {
                return new Answer(provocation.Name, refusal, studio.Told(refusal.Message));
            }
        }
    }
}
