using System.Text.Json;
using EditionRegister.Domain.People;

namespace EditionRegister.Cli;

/// <summary>People, for machines.</summary>
internal static class PersonJson
{
    public static void WriteHead(Utf8JsonWriter json, Person person)
    {
        json.WriteNumber("person", person.Id);
        json.WriteString("name", person.Name);
        json.WriteString("sort_name", person.SortName);
        json.WriteString("what", person.What);
        json.WriteBoolean("protected", person.IsProtected);
        json.WriteString("public_policy", person.Policy);
        json.WriteString("public_name", person.PublicText);
        json.WriteString("class_code", person.ClassCode);
        json.WriteString("contact", person.Contact);
        json.WriteString("note", person.Note);
        json.WriteBoolean("erased", person.IsErased);
    }
}
