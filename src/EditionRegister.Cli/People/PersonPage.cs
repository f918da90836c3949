using System.Text.Json;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.People;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Cli;

/// <summary>Someone with the works they had a part in, and the impressions they have or own.</summary>
internal sealed class PersonPage
{
    private static readonly Column[] WorkColumns = [new("work", IsRight: true), new("title"), new("as")];

    private readonly Person _person;
    private readonly List<(Work Work, string Role)> _made;
    private readonly List<ImpressionListed> _has;
    private readonly List<ImpressionListed> _owns;

    public PersonPage(Person person, IReadOnlyList<Work> works)
    {
        _person = person;
        _made = [.. from work in works from role in work.Roles where role.Person == person.Id select (work, role.Role)];
        _has = Sheets(works, sheet => sheet.Where?.Holder == person.Id);
        _owns = Sheets(works, sheet => sheet.Whose?.Person == person.Id);
    }

    public void Print(Printer printer)
    {
        printer.Line($"Person {Counted.Figure(_person.Id)}: {_person.FullName}");
        printer.Line();
        printer.Facts(
            ("What", _person.IsProtected ? $"{_person.What}, protected" : _person.What),
            ("Sorted as", _person.SortName),
            ("In public", _person.PublicText),
            ("Class code", _person.ClassCode),
            ("Contact", _person.Contact),
            ("Note", _person.Note));
        printer.Section("Works:", WorkColumns, [.. _made.Select(made => (string[])[Counted.Figure(made.Work.Id), made.Work.ShownTitle, made.Role])]);
        printer.Section("Has:", ImpressionLists.Columns, [.. _has.Select(ImpressionLists.Row)]);
        printer.Section("Owns:", ImpressionLists.Columns, [.. _owns.Select(ImpressionLists.Row)]);
        printer.Line();
        printer.Line($"Had a part in {Counted.Of(_made.Select(made => made.Work.Id).Distinct().Count(), "work")}; has {Counted.Sheets(_has.Count)}, owns {Counted.Figure(_owns.Count)}.");
    }

    public void Write(Utf8JsonWriter json)
    {
        PersonJson.WriteHead(json, _person);
        json.Each("works", _made, made =>
        {
            json.WriteNumber("work", made.Work.Id);
            json.WriteString("title", made.Work.Title);
            json.WriteString("role", made.Role);
        });
        json.Each("has", _has, one => ImpressionLists.Write(json, one));
        json.Each("owns", _owns, one => ImpressionLists.Write(json, one));
    }

    private static List<ImpressionListed> Sheets(IReadOnlyList<Work> works, Func<Impression, bool> which) =>
        [.. from work in works from sheet in work.Impressions where which(sheet) select new ImpressionListed(work, sheet)];
}
