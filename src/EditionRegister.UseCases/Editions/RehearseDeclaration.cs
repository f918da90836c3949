using EditionRegister.Domain.Editions;
using EditionRegister.Formats.Templates;
using EditionRegister.Store;
using EditionRegister.UseCases.Works;

namespace EditionRegister.UseCases.Editions;

/// <summary>A declaration as it would come out, and its sentences under the labels that a certificate has them under.</summary>
public sealed record DeclarationRehearsed(Rehearsal Rehearsal, IReadOnlyList<(string Label, string Sentence)> Sentences);

/// <summary>Shows what declaring an edition would come to, by the decisions that declaring makes. Writes nothing.</summary>
public sealed class RehearseDeclaration(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">Whatever <see cref="DeclareEdition"/> would refuse.</exception>
    public DeclarationRehearsed Run(long work, NewEdition plan)
    {
        var rehearsal = store.Read(reader => Rehearsal.Of(reader.WorkOrRefuse(work), plan));
        var wording = CertificateWording.Load(store.Folder.Templates);

        return new DeclarationRehearsed(rehearsal, [.. rehearsal.Sentences.Select(fact => (wording.Label(fact.Key), fact.Value))]);
    }
}
