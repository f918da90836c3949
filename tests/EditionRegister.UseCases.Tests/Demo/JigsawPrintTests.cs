using EditionRegister.Domain.Passes;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Tests;
using EditionRegister.UseCases.Demo;
using EditionRegister.UseCases.Wording;

namespace EditionRegister.UseCases.Tests.Demo;

/// <summary>The demo's jigsaw print against figures worked out by hand.</summary>
public sealed class JigsawPrintTests : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Register _register;
    private readonly Work _work;

    public JigsawPrintTests()
    {
        _register = Register.Open(DemoCopy.Into(new RegisterFolder(_folder.In("a"))));
        _work = _register.LookAround.Works().First(work => work.Title == "Groynes in Fog");
    }

    public void Dispose() => _folder.Dispose();

    // 14 started, 1 never used: 13 go in. One is held out (13 - 1 = 12), one spoiled (12 - 1 = 11), none (11).
    [Fact]
    public void Each_pass_leaves_what_was_worked_out_by_hand()
    {
        var standings = PassBalance.Of(_work.Runs[0]);

        Assert.Equal([(13, 12L), (12, 11L), (11, 11L)], standings.Select(standing => (standing.Pass.SheetsIn!.Value, standing.Left!.Value)));
        Assert.Equal(
            [
                "sea grey and ochre, sea block, sand block · 13 in, 12 out, 1 held out (progressive proof)",
                "pale blue (oil ink, half transparent) and grey (oil ink, half transparent) in a blend, sea block · 12 in, 11 out, 1 misregistration",
                "black, key block state II · 11 in, 11 out",
            ],
            _work.Runs[0].Passes.Select(pass => PassText.Of(_work, pass)));
    }

    // 11 came through and 1 was held out: 12 in the pile, and 1 + 1 + 12 = 14.
    [Fact]
    public void The_pile_holds_what_came_through_and_the_proof_held_out_on_the_way()
    {
        var pile = _work.Impressions.Where(sheet => sheet.Run == _work.Runs[0].Id).ToList();

        Assert.Equal("14 started = 1 unused + 1 spoiled + 12 in the pile, 1 of them held out", RunBalance.Of(_work, _work.Runs[0]));
        Assert.Equal([9, 1, 1, 1], new[] { "kept", "spare", "left-out", "held-out" }.Select(standing => pile.Count(sheet => sheet.Standing == standing)));
        Assert.Equal(_work.Runs[0].Passes[0].Id, Assert.Single(pile, sheet => sheet.Standing == "held-out").AfterPass);
    }

    // Of 9 kept: 8 numbered and 1 artist's proof.
    [Fact]
    public void Eight_are_numbered_and_one_is_an_artists_proof()
    {
        var edition = Assert.Single(_work.Editions);

        Assert.Equal(8, edition.Size);
        Assert.Equal(9, _work.Impressions.Count(sheet => sheet.IsSigned && edition.Find(sheet.Numbering) is not null));
    }

    [Fact]
    public void Three_blocks_have_codes_of_their_own_and_lie_on_one_shelf()
    {
        Assert.Equal(["key", "sea", "sand"], _work.Matrices.Select(matrix => matrix.Part));
        Assert.Equal(3, _work.Matrices.Select(matrix => matrix.Code).OfType<string>().Distinct().Count());
        Assert.All(_work.Matrices, matrix => Assert.Equal("Studio › Block shelf", _work.Book.PathOf(matrix.Place)));
        Assert.Equal(_work.Matrices[1].Id, _register.LookAround.MatrixOfCode(_work.Matrices[1].ShownCode!)!.Matrix.Id);
    }

    // 13 + 12 + 11 = 36 sheets through passes, 1 of them spoiled: 35 kept. Told of this work alone, as other stories of the demo may have passes too.
    [Fact]
    public void Its_passes_kept_thirty_five_of_thirty_six()
    {
        var counts = _work.Runs[0].Passes.Select(PassCounts.Of).ToList();

        Assert.Equal(36, counts.Sum(one => one.In!.Value + one.Added!.Value));
        Assert.Equal(35, counts.Sum(one => one.In!.Value - one.Spoiled!.Value));
        Assert.True(_register.PlanSheets.Learned()!.Of >= 36);
    }
}
