using EditionRegister.Domain;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Documents;

/// <summary>Why a document or a list is not written.</summary>
public static class DocumentRefusals
{
    public static RefusedException NoneStands(Impression sheet) =>
        new("certificate-none-stands", $"No certificate stands for {sheet.ShownCode}. Nothing was written. Issue one with `edreg certificate issue`.");

    public static RefusedException StatementLost(string serial) =>
        new("certificate-statement-lost", $"The statement of {serial} is erased or damaged, so it cannot be drawn again. Nothing was written. `edreg check` says more; a new certificate can take its place.");

    public static RefusedException NotWritten(string path, string why) =>
        new("output-not-written", $"{path} could not be written: {why.TrimEnd('.')}. What stood there before still stands. Choose another place with --out, or make room.");

    public static RefusedException NothingToList() =>
        new("nothing-to-list", "No impression fits that choice. Nothing was written. `edreg list` shows what there is.");
}
