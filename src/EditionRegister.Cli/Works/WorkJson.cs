using System.Text.Json;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>Works, for machines.</summary>
internal static class WorkJson
{
    public static void WriteHead(Utf8JsonWriter json, Work work)
    {
        json.WriteNumber("work", work.Id);
        json.WriteNumber("v", work.V);
        json.WriteString("title", work.Title);
        json.WriteString("title_state", work.TitleState);
        json.Texts("makers", work.Makers.Select(maker => maker.FullName));
        json.Date("year", work.Year);
        TechniqueJson.Write(json, work);
    }

    public static void Write(Utf8JsonWriter json, Work work)
    {
        WriteHead(json, work);
        json.WriteString("note", work.Note);
        json.Each("people", work.Roles, role =>
        {
            json.WriteString("role", role.Role);
            json.WriteNumber("person", role.Person);
            json.WriteString("name", work.Book.NameOf(role.Person));
        });
        json.Each("matrices", work.Matrices, matrix => MatrixJson.Write(json, work, matrix));
        json.Each("runs", work.Runs, run => RunJson.Write(json, work, run));
        json.Each("editions", work.Editions, edition => EditionJson.Write(json, edition));
        json.WriteNumber("sheets", work.Impressions.Count);
    }
}
