using CsCheck;
using EditionRegister.Domain.Reading.Papers;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Whatever is typed, the reader answers, and what it writes reads as the same.</summary>
public sealed class PaperReaderOnAnyTextTests
{
    [Fact]
    public void It_never_throws_and_what_it_read_stands_in_the_text() =>
        AnyText.Of.Sample(text =>
        {
            var read = PaperReader.Read(text);

            Assert.NotNull(read.Explain());
            Assert.All(read.Spans, span => Assert.InRange(span.GetOffsetAndLength(text.Length).Length, 1, text.Length));
            Assert.All(read.Left, left => Assert.False(string.IsNullOrWhiteSpace(left)));
        });

    [Fact]
    public void What_it_writes_reads_as_the_same() =>
        AnyText.Of.Sample(text =>
        {
            var read = PaperReader.Read(text);

            var again = PaperReader.Read(read.Write());

            Assert.Equal(read.Write(), again.Write());
            Assert.Equal((read.Name, read.Maker, read.Weight, read.Lot, read.Sheet, read.SheetName), (again.Name, again.Maker, again.Weight, again.Lot, again.Sheet, again.SheetName));
            Assert.Equal(read.Edges, again.Edges);
            Assert.Equal(read.Left, again.Left);
        });
}
