using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Cli;

/// <summary>What is said of a sale.</summary>
internal sealed class SaleOptions
{
    private readonly Option<string?> _to = Opt.Text("--to", "WHO", "The buyer: a name or number of the address book.");
    private readonly Option<bool> _buyerUnknown = Opt.Flag("--buyer-unknown", "Nobody knows who bought it.");
    private readonly Option<string?> _seller = Opt.Text("--seller", "WHO", "The owner who sells. Else the maker.");
    private readonly Option<string?> _agent = Opt.Text("--agent", "WHO", "Who sold for the owner. Else the consignee who has the sheet.");
    private readonly AmountOption _price = AmountOption.Create("--price", "What the buyer paid for each.");
    private readonly AmountOption _net = AmountOption.Create("--net", "What the owner receives for each. Else worked out from the consignee's share.");
    private readonly CurrencyOption _currency = CurrencyOption.Create();
    private readonly Option<RecordedDate?> _date = Opt.Date("--date", "When. Else today.");
    private readonly Option<bool> _collected = Opt.Flag("--collected", "The buyer took it along.");
    private readonly Option<bool> _despite = Opt.Flag("--despite-reservation", "Also where it is reserved for, or on approval with, somebody else.");
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _to, _buyerUnknown, _seller, _agent, _price, _net, _currency, _date, _collected, _despite, _note })
        {
            command.Add(option);
        }
    }

    /// <exception cref="WrongUsageException">Neither a buyer nor that none is known, or both.</exception>
    public SalePeople People(ParseResult line)
    {
        var buyer = line.GetValue(_to);

        return buyer is null != line.GetValue(_buyerUnknown)
            ? throw new WrongUsageException("Say who bought: --to, or --buyer-unknown where nobody knows; one of the two.")
            : new SalePeople(buyer, line.GetValue(_seller), line.GetValue(_agent));
    }

    public Sale Read(ParseResult line, string usualCurrency)
    {
        var currency = line.GetValue(_currency) ?? usualCurrency;

        return new Sale
        {
            Date = line.GetValue(_date) ?? RecordedDate.None,
            Price = _price.Read(line, currency),
            Net = _net.Read(line, currency),
            Currency = currency,
            Note = line.GetValue(_note),
            Collected = line.GetValue(_collected),
            DespiteReservation = line.GetValue(_despite),
        };
    }
}
