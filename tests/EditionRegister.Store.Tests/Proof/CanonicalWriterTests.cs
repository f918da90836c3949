using System.Text;
using System.Text.Json;
using CsCheck;
using EditionRegister.Store.Proof;

namespace EditionRegister.Store.Tests.Proof;

public sealed class CanonicalWriterTests
{
    private static readonly Gen<string> Text =
        Gen.OneOf(
                Gen.Int[1, 0x7F],
                Gen.Int[0x80, 0xD7FF],
                Gen.Int[0xE000, 0xFFFF],
                Gen.Int[0x10000, 0x10FFFF])
            .List[0, 8]
            .Select(scalars => string.Concat(scalars.Select(scalar => new Rune(scalar).ToString())));

    private static readonly Gen<object?> Leaf = Gen.OneOf(
        Gen.Long[-CanonicalWriter.LargestInteger, CanonicalWriter.LargestInteger].Select(value => (object?)value),
        Text.Select(value => (object?)value),
        Gen.Bool.Select(value => (object?)value),
        Gen.Const((object?)null));

    private static readonly Gen<object?> Document = Nested(depth: 3);

    // The second opinion is System.Text.Json, which escapes, indents and leaves names as they come.
    [Fact]
    public void Writes_what_the_canonicaliser_makes_of_the_same_document()
    {
        JsonSerializerOptions indented = new() { WriteIndented = true };

        Document.Sample(document =>
        {
            CanonicalWriter writer = new();

            Write(writer, document);

            Assert.Equal(
                Encoding.UTF8.GetString(CanonicalJson.Canonicalise(JsonSerializer.SerializeToUtf8Bytes(document, indented))),
                Encoding.UTF8.GetString(writer.ToArray()));
        });
    }

    [Fact]
    public void Writes_the_body_of_an_entry()
    {
        CanonicalWriter writer = new();

        writer.StartObject();
        writer.Name("at");
        writer.Value("2026-03-01T10:00:00.000Z");
        writer.Name("by");
        writer.Null();
        writer.Name("n");
        writer.Value(4711);
        writer.Name("set");
        writer.StartArray();
        writer.Raw("[\"number\",17]"u8);
        writer.Value(true);
        writer.EndArray();
        writer.EndObject();

        Assert.Equal("""{"at":"2026-03-01T10:00:00.000Z","by":null,"n":4711,"set":[["number",17],true]}""", Encoding.UTF8.GetString(writer.ToArray()));
    }

    [Fact]
    public void Starts_afresh_when_cleared()
    {
        CanonicalWriter writer = new();
        writer.StartObject();
        writer.Name("title");

        writer.Clear();
        writer.Value("Harbour");

        Assert.Equal("\"Harbour\"", Encoding.UTF8.GetString(writer.ToArray()));
    }

    [Theory]
    [InlineData(9_007_199_254_740_992)]
    [InlineData(-9_007_199_254_740_992)]
    [InlineData(long.MinValue)]
    [InlineData(long.MaxValue)]
    public void Refuses_integers_a_double_cannot_tell_apart(long value)
    {
        CanonicalWriter writer = new();

        Assert.Throws<ArgumentException>(() => writer.Value(value));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0xD83D)]
    [InlineData(0xDE02)]
    public void Refuses_text_with_NUL_or_half_a_character(int unit)
    {
        CanonicalWriter writer = new();
        var text = $"Har{(char)unit}bour";

        Assert.Throws<ArgumentException>(() => writer.Value(text));

        writer.Clear();
        writer.StartObject();
        Assert.Throws<ArgumentException>(() => writer.Name(text));
    }

    [Theory]
    [InlineData("b", "a")]
    [InlineData("a", "a")]
    [InlineData("\ufb33", "\ud83d\ude02")]                          // by code points this would be the right order
    public void Refuses_names_out_of_order(string first, string second)
    {
        CanonicalWriter writer = new();
        writer.StartObject();
        writer.Name(first);
        writer.Null();

        Assert.Throws<ArgumentException>(() => writer.Name(second));
    }

    [Fact]
    public void Refuses_to_hand_out_half_a_document()
    {
        CanonicalWriter writer = new();
        writer.StartArray();

        Assert.Throws<InvalidOperationException>(writer.ToArray);
        Assert.Throws<InvalidOperationException>(writer.EndObject);
    }

    [Fact]
    public void Refuses_a_value_without_a_name_and_a_second_document()
    {
        CanonicalWriter writer = new();
        writer.StartObject();

        Assert.Throws<InvalidOperationException>(writer.Null);

        writer.EndObject();
        Assert.Throws<InvalidOperationException>(writer.Null);
    }

    private static Gen<object?> Nested(int depth) => depth == 0
        ? Leaf
        : Gen.OneOf(
            Leaf,
            Nested(depth - 1).List[0, 4].Select(items => (object?)items),
            Gen.Select(Text, Nested(depth - 1)).List[0, 4].Select(members => (object?)members
                .DistinctBy(member => member.Item1, StringComparer.Ordinal)
                .ToDictionary(member => member.Item1, member => member.Item2, StringComparer.Ordinal)));

    private static void Write(CanonicalWriter writer, object? document)
    {
        switch (document)
        {
            case null: writer.Null(); break;
            case long number: writer.Value(number); break;
            case string text: writer.Value(text); break;
            case bool yes: writer.Value(yes); break;
            case Dictionary<string, object?> members: WriteObject(writer, members); break;
            case List<object?> items: WriteArray(writer, items); break;
            default: throw new ArgumentException($"No way to write {document}.", nameof(document));
        }
    }

    private static void WriteArray(CanonicalWriter writer, List<object?> items)
    {
        writer.StartArray();
        items.ForEach(item => Write(writer, item));
        writer.EndArray();
    }

    private static void WriteObject(CanonicalWriter writer, Dictionary<string, object?> members)
    {
        writer.StartObject();

        foreach (var (name, value) in members.OrderBy(member => member.Key, StringComparer.Ordinal))
        {
            writer.Name(name);
            Write(writer, value);
        }

        writer.EndObject();
    }
}
