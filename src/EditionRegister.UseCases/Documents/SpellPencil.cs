using EditionRegister.Domain.Documents;
using EditionRegister.Store;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.UseCases.Documents;

/// <summary>Spells what is to be pencilled on each sheet: number at left, title in the middle, signature at right.</summary>
public sealed class SpellPencil(RegisterStore store)
{
    public IReadOnlyList<(string Code, PencilText Text)> Run(ImpressionChoice choice) => store.Read(reader => ImpressionsChosen.Find(reader, choice)
        .SelectMany(chosen => chosen.Sheets.Select(sheet => (sheet.ShownCode, PencilText.For(chosen.Work, sheet))))
        .ToList());
}
