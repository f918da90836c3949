using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Tui.Documents;

/// <summary>Draws certificates that stand one after another, and says how far it has come.</summary>
internal static class CertificateFiles
{
    /// <exception cref="Domain.RefusedException">None stands for a sheet, or a file cannot be written; those before it are.</exception>
    public static async Task<IReadOnlyList<string>> WriteAsync(Desk desk, PaperOrder order)
    {
        List<string> files = [];

        try
        {
            foreach (var code in order.Codes)
            {
                desk.Progress($"Writing certificate {Counted.Figure(files.Count + 1)} of {Counted.Figure(order.Codes.Count)}…");
                files.AddRange(await desk.Store.Do(register => register.WriteCertificates.Run(ImpressionChoice.OfCode(code), order.Folder)));
            }
        }
        finally
        {
            desk.Written.Add(files);
        }

        return files;
    }
}
