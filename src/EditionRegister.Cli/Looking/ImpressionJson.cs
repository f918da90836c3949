using System.Text.Json;
using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>One impression whole, for machines.</summary>
internal static class ImpressionJson
{
    public static void Write(Utf8JsonWriter json, ImpressionSeen seen)
    {
        var (work, sheet) = (seen.Work, seen.Impression);
        ImpressionLists.Write(json, new ImpressionListed(work, sheet));
        json.Date("year", work.Year);
        TechniqueJson.Write(json, work);
        Run(json, work, sheet);
        Sheet(json, work, sheet);
        json.Each("inscriptions", sheet.Inscriptions, one =>
        {
            json.WriteString("side", one.Side);
            json.WriteString("manner", one.Manner);
            json.WriteString("position", one.Position);
            PencilJson.Members(json, one.Text, one.Says);
            json.Each("roles", one.Roles, role =>
            {
                json.WriteString("role", role.Role);
                json.WriteString("name", role.Name);
            });
        });
        SheetHistoryJson.Write(json, work, sheet);
        ChainJson.Write(json, work, sheet);
        json.Each("documents", sheet.Documents, document =>
        {
            json.WriteString("kind", document.Kind);
            json.WriteString("serial", document.Serial);
            json.Date("issued", document.Issued);
            json.WriteString("standing", document.Standing);
        });
        json.Each("kept_columns", sheet.KeptColumns, kept =>
        {
            json.WriteString("column", kept.Header);
            json.WriteString("value", kept.Value);
        });
        ConditionJson.Reports(json, work, sheet);
        json.Each("history", seen.History, entry =>
        {
            json.WriteNumber("entry", entry.N);
            json.WriteString("at", entry.At);
            json.WriteString("deed", entry.Deed);
        });
    }

    private static void Run(Utf8JsonWriter json, Work work, Impression sheet)
    {
        var run = work.RunOf(sheet);
        json.Whole("run", run?.Ordinal);
        json.WriteNumber("place_in_pile", sheet.Ordinal);

        if (run is not null)
        {
            RunJson.WriteSheet(json, run);
        }
    }

    private static void Sheet(Utf8JsonWriter json, Work work, Impression sheet)
    {
        json.WriteString("variant", sheet.Variant);
        json.WriteString("dedication", sheet.Dedication);
        json.WriteString("hand_colouring", SheetText.HandColouring(work, sheet));
        json.WriteString("ghost_of", SheetText.GhostOf(work, sheet));
        json.WriteString("ghosts", SheetText.Ghosts(work, sheet));
        json.WriteString("replaces", SheetText.Replaces(work, sheet));
        json.WriteString("replaced_by", SheetText.ReplacedBy(work, sheet));
        json.WriteString("fault", sheet.Fault);
        json.WriteString("fault_note", sheet.FaultNote);
        json.WriteString("number_given", work.NumberingOf(sheet)?.Spell(sheet.Number));
        json.WriteString("pencilled", sheet.Pencilled);
        PencilJson.Write(json, sheet);
        json.WriteString("titled", sheet.Titled);
        json.WriteString("signed", sheet.Signed);
        json.WriteString("signature", sheet.Signature);
        json.WriteString("condition", sheet.Condition);
        json.WriteString("for_sale", sheet.ForSale);
        json.Amount("asking", sheet.Asking, sheet.AskingCurrency);
        json.WriteString("asking_currency", sheet.AskingCurrency);
        json.WriteString("note", sheet.Note);
    }
}
