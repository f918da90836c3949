using EditionRegister.Domain.Documents;
using EditionRegister.Formats.Templates;
using EditionRegister.Store;

namespace EditionRegister.UseCases.Documents;

/// <summary>The label sheets there are to print on: the shipped ones and the register's own.</summary>
public sealed class ListLabelSheets(RegisterStore store)
{
    /// <exception cref="Domain.RefusedException">One of the files is wrong; told with its name.</exception>
    public IReadOnlyList<LabelSheet> Run() => LabelSheets.All(store.Folder.Templates);
}
