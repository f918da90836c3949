using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases.Moves;

namespace EditionRegister.Cli;

/// <summary><c>edreg amend</c>: puts a step of a sheet's chains right.</summary>
internal static class AmendCommand
{
    private static readonly string[] Kinds = [.. MoveKind.All.Where(kind => !kind.IsFirst).Select(kind => kind.Word)];

    public static Command Create(CommandContext context)
    {
        var code = Arg.Code("The register code of the impression.");
        AmendedStepOptions step = new();
        var kind = Opt.Word("--kind", Kinds, "What kind of step it was.");
        var date = Opt.Date("--date", "When it was.");
        var to = Opt.Text("--to", "WHO", "Of a transfer: whose it was then.");
        var toUnknown = Opt.Flag("--to-unknown", "Of a transfer: nobody knows whose it was then.");
        var with = Opt.Text("--with", "WHO", "Of a move: who had it then.");
        var place = Opt.Text("--place", "PLACE", "Of a move: where it lay then.");
        var nowhere = Opt.Flag("--place-unknown", "Of a move: nobody knows where it was then.");
        var until = Opt.Date("--until", "Of a move: until when, as when terms are prolonged.");
        var rate = ShareOption.Create("--rate", "Of a consignment: their share of the price, in per cent.");
        var agreement = Opt.Text("--agreement", "TEXT", "Of a move: the agreement under which it went.");
        var agent = Opt.Text("--agent", "WHO", "Of a sale: who sold for the owner.");
        var price = AmountOption.Create("--price", "Of a sale: what the buyer paid.");
        var net = AmountOption.Create("--net", "Of a sale: what the owner received.");
        var currency = CurrencyOption.Create();
        var note = Opt.Text("--note", "TEXT", "What is noted of it.");
        CommandWithExample command = new("amend", "Puts a step of where a sheet was or whose it was right, puts one in that was learned of late, or takes one out that never was; the steps after it go on from there.", "edreg amend 7KQ4-M2X3 --after-move 2 --kind lent --with \"Harbour Museum\" --date 2026-05") { code };
        step.AddTo(command);

        foreach (var option in new Option[] { kind, date, to, toUnknown, with, place, nowhere, until, rate, agreement, agent, price, net, currency, note })
        {
            command.Add(option);
        }

        command.SetAction(line => context.Record(line, register =>
        {
            var (sheet, (chain, where)) = (line.GetRequiredValue(code), step.Read(line));
            var money = line.GetValue(currency) ?? register.Settings.Currency;

            if (chain == "whereabouts")
            {
                SentTo? sent = line.GetValue(nowhere) ? new SentTo(null) : line.GetValue(with) is null && line.GetValue(place) is null ? null : new SentTo(line.GetValue(with), line.GetValue(place));
                register.AmendChain.Move(sheet, where, sent, new MoveCorrection
                {
                    Kind = KindOf(line.GetValue(kind)),
                    Date = line.GetValue(date),
                    Until = line.GetValue(until),
                    Rate = line.GetValue(rate),
                    Agreement = line.GetValue(agreement),
                    Note = line.GetValue(note),
                });
            }
            else
            {
                register.AmendChain.Transfer(sheet, where, new AmendedPeople(line.GetValue(to), line.GetValue(toUnknown), line.GetValue(agent)), new TransferCorrection
                {
                    Kind = KindOf(line.GetValue(kind)),
                    Date = line.GetValue(date),
                    Price = price.Read(line, money),
                    Net = net.Read(line, money),
                    Currency = money,
                    Note = line.GetValue(note),
                });
            }

            var shown = register.LookAround.Impression(sheet).Impression.ShownCode;

            return new Recorded(MovesSaid.Amended(shown, where.Step, where.What, chain), json =>
            {
                json.WriteString("code", shown);
                json.WriteString("chain", chain);
                json.WriteNumber("step", where.Step);
                json.WriteString("what", where.What == Amending.PutAfter ? "put-after" : where.What == Amending.TakeOut ? "taken-out" : "put-right");
            });
        }));

        return command;
    }

    private static MoveKind? KindOf(string? word) => word is null ? null : MoveKind.Of(word);
}

/// <summary>Which step of which chain is meant, and what is done about it.</summary>
internal sealed class AmendedStepOptions
{
    private readonly Option<int?> _move = Opt.Some("--move", "The step of where it was, as `edreg show` numbers it.");
    private readonly Option<int?> _transfer = Opt.Some("--transfer", "The step of whose it was, as `edreg show` numbers it.");
    private readonly Option<int?> _afterMove = Opt.Some("--after-move", "Puts a new step of where it was after this one.");
    private readonly Option<int?> _afterTransfer = Opt.Some("--after-transfer", "Puts a new step of whose it was after this one.");
    private readonly Option<bool> _takeOut = Opt.Flag("--take-out", "Takes the step out: it never was.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _move, _transfer, _afterMove, _afterTransfer, _takeOut })
        {
            command.Add(option);
        }
    }

    /// <exception cref="WrongUsageException">None of the four, or more than one; or a step to be taken out that is put in.</exception>
    public (string Chain, AmendedStep Step) Read(ParseResult line)
    {
        var given = new[] { (_move, "whereabouts", Amending.PutRight), (_transfer, "ownership", Amending.PutRight), (_afterMove, "whereabouts", Amending.PutAfter), (_afterTransfer, "ownership", Amending.PutAfter) }
            .Where(one => line.GetValue(one.Item1) is not null).ToList();

        return given is not [var (option, chain, what)] || (line.GetValue(_takeOut) && what == Amending.PutAfter)
            ? throw new WrongUsageException("Say which step: --move or --transfer, with --take-out where it never was; or --after-move or --after-transfer for one that was learned of late.")
            : (chain, new AmendedStep(line.GetValue(option)!.Value, line.GetValue(_takeOut) ? Amending.TakeOut : what));
    }
}
