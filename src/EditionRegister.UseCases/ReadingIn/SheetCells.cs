using EditionRegister.Domain.Editions;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Numbers;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.ReadingIn;

/// <summary>The cells of a row that may hold words about number, edition and lettering. What is read in them is told, and what is not, with the reason.</summary>
internal sealed class SheetCells(RowCells cells, OwnWords own)
{
    /// <summary>Null where the cell says nothing, or what no sheet can bear: that is a problem of the file's.</summary>
    /// <param name="standing">A number in words on a sheet that bears none is an inscription; a plain one is a contradiction.</param>
    public NumberOnSheet? Number(string standing)
    {
        if (cells.Text(ReadInColumn.Number) is not { } text || text.Trim() is "unknown" or "[unknown]")
        {
            return null;
        }

        var number = NumberOnSheet.Read(text, own);

        if (number.IsImpossible)
        {
            cells.Problem(ReadInColumn.Number, text, $"no sheet can have this number; the form is that of {PencilledNumber.Form} If the sheet really says so, put it in the inscription column.");

            return null;
        }

        if (number is { Words: not null, Number: { } named } && !MayBear(standing, named.Kind))
        {
            number = number with { Number = null, WhyNot = $"a sheet that is {standing.Replace('-', ' ')} bears no number" };
        }

        Tell(number, text);

        return number.Number is null ? number with { Written = text } : number;
    }

    public string? Inscription()
    {
        var text = cells.Text(ReadInColumn.Inscription);

        if (InscriptionSaid.Of(text, own) is { } read)
        {
            cells.Reading(ReadInColumn.Inscription, text!, read);
        }

        return text;
    }

    public StatedEdition? Edition()
    {
        if (cells.Text(ReadInColumn.EditionSize) is not { } text)
        {
            return null;
        }

        var stated = StatedEdition.Read(text, own);

        if (stated.WhyNot is not null)
        {
            cells.Problem(ReadInColumn.EditionSize, text, $"is no size; write {StatedEdition.Form}, or unknown.");

            return null;
        }

        if (stated.WithoutKind is { } unknown)
        {
            cells.Remark(ReadInColumn.EditionSize, text, $"the register has no kind of numbering for {unknown}; of that the words are kept");
        }

        if (stated.Words is { } words)
        {
            cells.Reading(ReadInColumn.EditionSize, text, words.InWords(own));
        }

        return stated;
    }

    private static bool MayBear(string standing, NumberingKind kind) => standing == "kept" || (standing == "held-out" && !kind.InSize);

    private void Tell(NumberOnSheet number, string text)
    {
        if (number.WhyNot is { } why)
        {
            cells.Remark(ReadInColumn.Number, text, $"is kept as the inscription, and the number is unknown: {why}");
        }
        else if (number.Words is { } words)
        {
            cells.Reading(ReadInColumn.Number, text, words.InWords(own));
        }
    }
}
