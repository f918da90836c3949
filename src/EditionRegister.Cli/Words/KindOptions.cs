using System.CommandLine;

namespace EditionRegister.Cli;

/// <summary>What is said of a kind of numbering.</summary>
internal sealed class KindOptions
{
    private static readonly string[] YesNo = ["yes", "no"];

    public Option<string?> Mark { get; } = Opt.Text("--mark", "MARK", "As pencilled before the number: L.P., bis.");

    public Option<string?> Name { get; } = Opt.Text("--name", "NAME", "As papers say it, of one: lettered proof.");

    public Option<string?> InSize { get; } = Opt.Word("--in-size", YesNo, "Whether it counts in the edition size. Else no.");

    public Option<string?> InTotal { get; } = Opt.Word("--in-total", YesNo, "Whether it counts in the total of impressions. Else yes.");

    public Option<string?> ForSale { get; } = Opt.Word("--for-sale", YesNo, "Whether it is sold by custom. Else no.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { Mark, Name, InSize, InTotal, ForSale })
        {
            command.Add(option);
        }
    }

    public static bool? Yes(string? word) => word is null ? null : word == "yes";
}
