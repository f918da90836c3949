using CsCheck;
using EditionRegister.Domain.Reading.Sizes;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.Domain.Tests.Reading;

/// <summary>Whatever is typed, the reader answers.</summary>
public sealed class SizeReaderOnAnyTextTests
{
    [Fact]
    public void It_never_throws_and_what_it_read_stands_in_the_text_one_behind_the_other() =>
        AnyText.Of.Sample(text =>
        {
            var read = SizeReader.Read(text, LengthUnit.Millimetre);
            var spans = read.Sizes.Select(size => size.Span).Concat(read.Declined.Select(declined => declined.Span)).Select(span => span.GetOffsetAndLength(text.Length)).OrderBy(span => span.Offset).ToList();

            Assert.NotNull(read.Explain());
            Assert.All(spans, span => Assert.True(span.Length > 0));
            Assert.All(read.Sizes.SelectMany(size => size.Lengths), length => Assert.InRange(length, 1, Length.Largest));
            Assert.All(read.Sizes, size => Assert.NotEmpty(size.Lengths));
            Assert.All(SizePart.All, part => Assert.True(SizeReader.SizeOf(text, part) is { Size: null } without ? without.WhyNot is not null : SizeReader.SizeOf(text, part).WhyNot is null));
        });

    [Fact]
    public void Sizes_do_not_lie_over_each_other() =>
        AnyText.Of.Sample(text =>
        {
            var spans = SizeReader.Read(text, LengthUnit.Millimetre).Sizes.Select(size => size.Span.GetOffsetAndLength(text.Length)).ToList();

            Assert.All(spans.Zip(spans.Skip(1)), pair => Assert.True(pair.First.Offset + pair.First.Length <= pair.Second.Offset));
        });
}
