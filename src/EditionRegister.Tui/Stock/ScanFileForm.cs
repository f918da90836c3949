using EditionRegister.Domain.Stock;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Stock;

namespace EditionRegister.Tui.Stock;

/// <summary>Which file codes are read from.</summary>
internal static class ScanFileForm
{
    private const string File = "File";

    public static Form Of(Desk desk, ScanPage page) => new(
        "Codes from a file",
        [new Field(File) { IsNeeded = true, Form = "a text file with one code in each line", Wrong = TypedPath.Wrong }],
        async form =>
        {
            var scans = await desk.Store.Do(_ => ScansFromFile.Read(TypedPath.Full(form[File]!)));

            if (scans.Misread.Count > 0)
            {
                throw StockRefusals.Misread(scans.Misread);
            }

            var added = await page.AddAsync(scans.Codes);

            return new Saved($"{Counted.Of(added, "code")} taken from the file; nothing is recorded yet.{(scans.Codes.Count > added ? $" {Counted.Of(scans.Codes.Count - added, "code")} had been scanned before." : "")}");
        });
}
