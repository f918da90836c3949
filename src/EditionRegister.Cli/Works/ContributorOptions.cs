using System.CommandLine;
using EditionRegister.UseCases.Works;

namespace EditionRegister.Cli;

/// <summary>Who had a part in a work beside its makers.</summary>
internal sealed class ContributorOptions
{
    private readonly IReadOnlyList<(string Role, Option<string[]?> Who)> _roles =
    [
        ("printer", Opt.Texts("--printer", "WHO", "Who printed it, where that was not the maker.")),
        ("workshop", Opt.Texts("--workshop", "WHO", "Where it was printed.")),
        ("publisher", Opt.Texts("--publisher", "WHO", "Who published it.")),
        ("estate", Opt.Texts("--estate", "WHO", "Who acts for a maker who is dead.")),
    ];

    public void AddTo(Command command)
    {
        foreach (var (_, who) in _roles)
        {
            command.Add(who);
        }
    }

    public IReadOnlyList<Contributor> Read(ParseResult line) =>
        [.. from role in _roles from who in line.GetValue(role.Who) ?? [] select new Contributor(role.Role, who)];
}
