using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Tests.Integrity;

namespace EditionRegister.Domain.Tests.Documents;

public sealed class CertificateComposerMatrixTests
{
    [Theory]
    [InlineData(new[] { "block" }, "Block made")]
    [InlineData(new[] { "plate", "plate" }, "Plates made")]
    [InlineData(new[] { "block", "stencil" }, "Block and stencil made")]
    [InlineData(new[] { "other" }, "Matrix made")]
    [InlineData(new string[0], "Matrix made")]
    public void Calls_the_matrix_what_it_is(string[] kinds, string label)
    {
        var matrices = kinds.Select((kind, i) => Harbour.Clean().Matrices[0] with { Id = i, What = kind }).ToList();
        var work = Harbour.Clean() with { Matrices = matrices };

        var statement = CertificateComposer.Compose(work, work.Impressions[0], ACertificate.Terms() with { Label = key => key == "matrix-year" ? "{matrix} made" : key });

        Assert.Equal(label, statement.Lines.Single(line => line.Key == "matrix-year").Label);
    }
}
