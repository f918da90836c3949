using System.Text.Json;
using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.UseCases;

namespace EditionRegister.Cli;

/// <summary>Passes, for machines, and what was recorded of one.</summary>
internal static class PassJson
{
    public static Recorded Recorded(Register register, long work, int run, int pass, Func<Work, PrintRun, Pass, string> said)
    {
        var found = register.LookAround.Work(work);
        var meant = found.Runs.First(one => one.Ordinal == run);
        var standing = PassBalance.Of(meant).First(one => one.Pass.Ordinal == pass);

        return new Recorded(said(found, meant, standing.Pass), json =>
        {
            json.WriteNumber("work", work);
            json.WriteNumber("run", run);
            Write(json, found, standing);
        });
    }

    public static void Write(Utf8JsonWriter json, Work work, PassStanding standing)
    {
        var pass = standing.Pass;
        json.WriteNumber("pass", pass.Ordinal);
        json.WriteString("kind", pass.Kind);
        json.WriteString("name", pass.Name);
        json.WriteString("side", pass.Side);
        json.WriteString("reach", pass.Reach);
        json.Date("done", pass.Done);
        json.Each("matrices", pass.Matrices, used =>
        {
            var matrix = work.Matrices.FirstOrDefault(one => one.Id == used.Matrix);
            json.WriteNumber("matrix", used.Matrix);
            json.WriteString("part", matrix?.Part);
            json.WriteString("state", matrix?.States.FirstOrDefault(state => state.Id == used.State)?.Name);
        });
        json.Each("colours", pass.Colours, colour =>
        {
            json.WriteString("colour", colour.Colour);
            json.WriteString("ink", colour.Ink);
            json.WriteString("manner", colour.Manner);
        });
        json.Texts("who", pass.People.Select(one => work.Book.NameOf(one.Person)));
        json.Whole("in", pass.SheetsIn);
        json.Whole("added", pass.Added);
        json.Whole("out", pass.SheetsOut);
        json.Whole("spoiled", pass.Spoiled);
        json.Each("spoiled_by", pass.SpoiledBy, one =>
        {
            json.WriteString("fault", one.Word);
            json.WriteNumber("sheets", one.Sheets);
        });
        json.Whole("held_out", pass.HeldOut);
        json.Each("held_out_as", pass.HeldOutAs, one =>
        {
            json.WriteString("kind", one.Word);
            json.WriteNumber("sheets", one.Sheets);
        });
        json.Whole("make_ready", pass.MakeReady);
        json.Whole("at_hand_after", standing.Left);
        json.Texts("sheets", pass.Sheets.Select(one => work.Impressions.FirstOrDefault(sheet => sheet.Id == one.Impression)?.ShownCode).OfType<string>());
        json.Texts("proofs", work.Impressions.Where(sheet => sheet.AfterPass == pass.Id).Select(sheet => sheet.ShownCode));
        json.WriteString("note", pass.Note);
    }
}
