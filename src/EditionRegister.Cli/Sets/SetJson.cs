using System.Text.Json;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>Sets of prints, for machines.</summary>
internal static class SetJson
{
    public static void WriteHead(Utf8JsonWriter json, SetSeen seen)
    {
        json.WriteNumber("work", seen.Work.Id);
        json.WriteString("title", seen.Work.Title);
        json.WriteString("form", seen.Set.Form);
        json.WriteString("signed_on", seen.Set.SignedOn);
        json.WriteString("note", seen.Set.Note);
        json.WriteNumber("copies", seen.Copies.Count);
        json.WriteNumber("gathered", seen.Copies.Count(copy => seen.Gathered(copy) == seen.Set.Parts.Count));
        json.Each("parts", seen.Set.Parts, part =>
        {
            json.WriteNumber("part", part.Ordinal);
            json.WriteNumber("work", part.Work);
            json.WriteString("title", part.Title);
        });
    }

    public static void WriteCopies(Utf8JsonWriter json, SetSeen seen) => json.Each("each_copy", seen.Copies, copy =>
    {
        ImpressionLists.Write(json, new ImpressionListed(seen.Work, copy));
        json.Each("sheets", copy.SetSheets, sheet =>
        {
            json.WriteNumber("part", sheet.Work);
            json.WriteString("code", sheet.ShownCode);
            json.WriteString("number", sheet.Number);
            json.WriteString("standing", sheet.Standing);
        });
    });
}
