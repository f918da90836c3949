using System.CommandLine;
using EditionRegister.Domain.Numbers;
using EditionRegister.UseCases.Choosing;

namespace EditionRegister.Cli;

/// <summary>The options with which every command that is about impressions lets them be chosen.</summary>
internal sealed class ChooserOptions
{
    private readonly Option<string?> _sheets = Opt.Ranges("--sheets", "SHEETS", $"Which impressions, by number or code: {NumberRanges.Form}.");
    private readonly Option<long?> _edition = Opt.Id("--edition", "an edition", "The edition whose numbers are meant.");
    private readonly Option<long?> _work = Opt.Id("--work", "a work", "The work whose pile is meant.");
    private readonly Option<int?> _run = Opt.Some("--run", "The print run whose pile is meant. Else 1.");
    private readonly Option<string?> _pile = Opt.Ranges("--pile", "PLACES", "Places in the pile of a print run: 1-14, 17. Needs --work.");

    private readonly Option<string?> _lyingIn = Opt.Text("--lying-in", "PLACE", "Everything that lies in a place, or in a place inside it.");
    private readonly Option<long?> _show = Opt.Id("--show", "a show", "Everything listed in a show, in list order.");
    private readonly Option<bool> _all = Opt.Flag("--all", "Every impression that is not left out.");

    private readonly Option<string?> _withSets = Opt.Word("--with-sets", ["yes", "no"], "Whether what lies in the copies of a set goes with them. Else yes where they are moved or pass on, no in all other deeds.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _sheets, _edition, _work, _run, _pile, _lyingIn, _show, _all, _withSets })
        {
            command.Add(option);
        }
    }

    /// <summary>True where the line chooses impressions, if only by half.</summary>
    public bool IsAsked(ParseResult line) =>
        (line.GetValue(_sheets) ?? line.GetValue(_pile) ?? line.GetValue(_lyingIn)) is not null || line.GetValue(_all) || (line.GetValue(_work) ?? line.GetValue(_run) ?? line.GetValue(_edition) ?? line.GetValue(_show)) is not null;

    /// <param name="line">The line as typed.</param>
    /// <param name="edition">The edition the command is about anyway, where --edition names none.</param>
    /// <exception cref="WrongUsageException">A pile without its work, or the other way round.</exception>
    public ImpressionChoice Read(ParseResult line, long? edition = null)
    {
        var (work, pile, run) = (line.GetValue(_work), line.GetValue(_pile), line.GetValue(_run));

        if (pile is null != work is null)
        {
            throw new WrongUsageException("--pile and --work go together: places in a pile, and the work it is of.");
        }

        if (run is not null && pile is null)
        {
            throw new WrongUsageException("--run says whose pile is meant, so it needs --pile.");
        }

        return new ImpressionChoice
        {
            Sheets = line.GetValue(_sheets),
            Edition = line.GetValue(_edition) ?? edition,
            Work = work,
            Run = run ?? 1,
            Pile = pile,
            LyingIn = line.GetValue(_lyingIn),
            Show = line.GetValue(_show),
            All = line.GetValue(_all),
            WithSets = line.GetValue(_withSets) is { } with ? with == "yes" : null,
        };
    }
}
