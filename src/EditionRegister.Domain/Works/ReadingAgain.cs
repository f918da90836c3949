using EditionRegister.Domain.Dates;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Reading.Inscriptions;
using EditionRegister.Domain.Reading.Papers;
using EditionRegister.Domain.Reading.Techniques;

namespace EditionRegister.Domain.Works;

/// <summary>
/// Words of a work that were written before the program could read them. What was read once stays as it is: only where nothing stands beside
/// the words is something set.
/// </summary>
public sealed class ReadingAgain(Work work, Deed deed)
{
    private readonly List<TextReadAgain> _read = [];

    /// <summary>What was read, in the order of the work.</summary>
    public IReadOnlyList<TextReadAgain> Run()
    {
        Date("work", work.Id, "year", "year", work.Year);
        Technique();

        foreach (var matrix in work.Matrices)
        {
            Date("matrix", matrix.Id, "made", "made", matrix.Made);
            Date("matrix", matrix.Id, "fate_date", "fate", matrix.FateDate);
            matrix.States.ToList().ForEach(state => Date("matrix_state", state.Id, "reached", "reached", state.Reached));
        }

        foreach (var run in work.Runs)
        {
            Date("print_run", run.Id, "printed", "printed", run.Printed);
            Date("print_run", run.Id, "ready", "ready", run.Ready);
            run.Passes.ToList().ForEach(pass => Date("pass", pass.Id, "done", "done", pass.Done));
            Paper(run);
        }

        foreach (var edition in work.Editions)
        {
            Date("edition", edition.Id, "declared", "declared", edition.Declared);
            Date("edition", edition.Id, "closed_on", "closed", edition.ClosedOn);
            edition.Entitlements.ToList().ForEach(agreed => Date("entitlement", agreed.Id, "agreed", "agreed", agreed.Agreed));
        }

        work.Pictures.ToList().ForEach(picture => Date("picture", picture.Id, "taken", "taken", picture.Taken));
        work.Impressions.ToList().ForEach(Sheet);

        return _read;
    }

    private void Sheet(Impression sheet)
    {
        foreach (var link in sheet.Whereabouts)
        {
            Date("whereabouts", link.Id, "moved", "moved", link.Moved);
            Date("whereabouts", link.Id, "until", "until", link.Until);
        }

        foreach (var reservation in sheet.Reservations)
        {
            Date("reservation", reservation.Id, "made", "made", reservation.Made);
            Date("reservation", reservation.Id, "until", "until", reservation.Until);
        }

        sheet.Ownership.ToList().ForEach(link => Date("ownership", link.Id, "passed", "passed", link.Passed));
        sheet.Links.ToList().ForEach(link => Date("sheet_link", link.Id, "made", "made", link.Made));
        sheet.Changes.ToList().ForEach(change => Date("sheet_change", change.Id, "changed", "changed", change.Changed));
        sheet.ConditionReports.ToList().ForEach(report => Date("condition_report", report.Id, "examined", "examined", report.Examined));

        if (sheet.Grade is { } grade)
        {
            Date("grade", grade.Id, "graded", "graded", grade.Graded);
        }

        Pencil(sheet);
        sheet.Inscriptions.ToList().ForEach(Inscription);
    }

    private void Pencil(Impression sheet)
    {
        var expected = work.NumberingOf(sheet)?.Notation;

        if (sheet is { Pencilled: { } text, PencilSays: null } && SheetReader.Pencil(text, expected, work.OwnWords) is not null)
        {
            deed.SetPencilled(sheet.Id, text, work.OwnWords, expected);
            _read.Add(new TextReadAgain(text, SheetReader.Statement(text, work.OwnWords).InWords(work.OwnWords)));
        }
    }

    private void Inscription(Inscription one)
    {
        if (one is { Text: { } text, Says: null, Roles: [] } && (SheetReader.Inscription(text, work.OwnWords) is not null || SheetReader.Roles(text).Count > 0))
        {
            deed.SetInscription(one.Id, text, work.OwnWords);
            _read.Add(new TextReadAgain(text, InWords(text)));
        }
    }

    private string InWords(string text) => string.Join("; ", SheetReader.Roles(text).Select(role => $"{role.Role} {role.Name}".TrimEnd())
        .Prepend(SheetReader.Inscription(text, work.OwnWords) is null ? "" : SheetReader.Statement(text, work.OwnWords).InWords(work.OwnWords))
        .Where(part => part.Length > 0));

    private void Date(string table, long id, string fact, string bounds, RecordedDate date)
    {
        if (date is { Text: { } text, EarliestText: null, LatestText: null, ReadAs: null } && RecordedDate.TryRead(text, out var read) && read != date)
        {
            deed.SetDate(table, id, fact, bounds, read);
            _read.Add(new TextReadAgain(text, read.InOtherWords ?? text));
        }
    }

    private void Technique()
    {
        if (work is { Technique: { } text, Techniques: [], TechniqueColours: null, TechniqueSupport: null } && TechniqueReader.Read(text, work.OwnWords.Techniques) is { Techniques.Count: > 0 } read)
        {
            deed.SetTechnique(work.Id, text, work.Techniques, work.OwnWords.Techniques);
            _read.Add(new TextReadAgain(text, read.InWords()));
        }
    }

    private void Paper(PrintRun run)
    {
        if (run is { Paper: { } text, PaperRead: null } && PaperReader.Read(text) is var read && read.Explain().Length > 0)
        {
            deed.SetPaper(run.Id, text);
            _read.Add(new TextReadAgain(text, read.Explain()));
        }
    }
}

/// <summary>Words as they stand in the register, and how they are read now.</summary>
public sealed record TextReadAgain(string Text, string As);
