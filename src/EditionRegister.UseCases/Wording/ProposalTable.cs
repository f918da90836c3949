using EditionRegister.Domain.Impressions;

namespace EditionRegister.UseCases.Wording;

/// <summary>The pile with its marks and what each sheet lacks and differs, for whoever draws it.</summary>
public static class ProposalTable
{
    public static ShownTable Of(string heading, IReadOnlyList<ProposedSheet> sheets) => new(
        heading,
        [
            new("sheet", IsRight: true), new("code"), .. GradeAspect.All.Select(aspect => new ShownColumn(aspect.Word, IsRight: true)),
            new("lacks", IsRight: true), new("differs", IsRight: true), new("sorted"),
        ],
        [
            .. sheets.Select(one => (string[])
            [
                Counted.Figure(one.Sheet.Ordinal), one.Sheet.ShownCode, .. GradeShown.Cells(one.Sheet.Grade), Counted.Figure(one.Lacks), Counted.Figure(one.Differs), Called.Plain(one.Sheet.Standing),
            ]),
        ]);

    /// <summary>The same where there is little room: the aspects by their letters.</summary>
    public static ShownTable Short(string heading, IReadOnlyList<ProposedSheet> sheets)
    {
        var whole = Of(heading, sheets);

        return whole with { Columns = [whole.Columns[0], whole.Columns[1], .. GradeAspect.All.Select(aspect => new ShownColumn(aspect.Word[..3], IsRight: true)), .. whole.Columns.Skip(2 + GradeAspect.All.Count)] };
    }
}
