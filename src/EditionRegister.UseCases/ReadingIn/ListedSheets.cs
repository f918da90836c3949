using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Works;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>Sheets known from a list and not from the press: the run they are said to be of, and each with the first step of its chains as listed.</summary>
internal static class ListedSheets
{
    /// <summary>A print run of which only what a row says is known.</summary>
    public static long Run(ReadRow row, long work, int ordinal, Deed deed)
    {
        var id = deed.NewId("print_run");
        deed.Set("print_run", id,
            ("work", work), ("ordinal", ordinal), ("purpose", "unknown"), ("state", row.State),
            ("image_height", row.ImageHeight), ("image_width", row.ImageWidth), ("sheet_height", row.SheetHeight), ("sheet_width", row.SheetWidth));
        deed.SetPaper(id, row.Paper);
        deed.SetWrittenSizes(id, row.ImageWritten, row.SheetWritten);
        deed.SetDate("print_run", id, "printed", row.Printed);

        return id;
    }

    /// <param name="row">What is said of it.</param>
    /// <param name="sheet">Its run, its place there, its code and its standing.</param>
    /// <param name="where">Where it is.</param>
    /// <param name="whose">Whose it is.</param>
    /// <param name="given">The numbering and the number it has; a numbering of 0 is none.</param>
    /// <param name="own">The register's own kinds.</param>
    /// <param name="deed">Where the facts go.</param>
    public static long Sheet(ReadRow row, NewSheet sheet, Position where, Owner whose, (long Numbering, int? Number) given, OwnWords own, Deed deed)
    {
        var listed = sheet with { FirstMove = MoveKind.AsListed, FirstTransfer = MoveKind.OwnedAsListed, Net = row.Net, Currency = row.NetCurrency };
        var id = listed.Record(where, whose, RecordedDate.None, deed);
        deed.Set("impression", id,
            ("signed", row.Signed), ("condition", row.Condition), ("note", row.Notes),
            ("for_sale", row.FreeToSell ?? "by-custom"), ("asking", row.Asking), ("asking_currency", row.Asking is null ? null : row.Currency));
        deed.SetPencilled(id, row.Pencilled, own, row.Number?.Notation);

        if (given.Numbering != 0)
        {
            deed.Set("impression", id, ("numbering", given.Numbering), ("number", given.Number));
        }

        var inscriptions = new[] { row.NotPlain, row.Inscription }.OfType<string>().ToList();

        for (var i = 0; i < inscriptions.Count; i++)
        {
            var inscription = deed.NewId("inscription");
            deed.Set("inscription", inscription, ("impression", id), ("ordinal", i + 1), ("side", "unknown"), ("manner", "unknown"));
            deed.SetInscription(inscription, inscriptions[i], own);
        }

        return id;
    }
}
