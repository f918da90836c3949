using System.CommandLine;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Dates;
using EditionRegister.UseCases;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;

namespace EditionRegister.Cli;

/// <summary>Where sheets go and on what terms; each command takes those of the options that mean something for it.</summary>
internal sealed class GoingOptions
{
    private readonly List<Option> _taken = [];
    private readonly Option<string?> _place = Opt.Text("--place", "PLACE", "Where they lie then: the end of its path is enough, as in Drawer 3.");
    private readonly Option<RecordedDate?> _date = Opt.Date("--date", "When. Else today.");
    private readonly Option<RecordedDate?> _until = Opt.Date("--until", "Until when.");
    private readonly Option<int?> _rate = ShareOption.Create("--rate", "Their share of the price, in per cent.");
    private readonly Option<string?> _agreement = Opt.Text("--agreement", "TEXT", "The agreement under which they go.");
    private readonly AmountOption _insured = AmountOption.Create("--insured", "What each is insured for.");
    private readonly CurrencyOption _currency = CurrencyOption.Create();
    private readonly Option<string?> _note = Opt.Text("--note", "TEXT", "Anything else.");
    private readonly Option<string?> _who;

    /// <param name="who">The option that names who has them then.</param>
    /// <param name="description">What it says.</param>
    public GoingOptions(string who, string description)
    {
        _who = Opt.Text(who, "WHO", description);
        Take(_who);
    }

    public GoingOptions WhoIsNeeded()
    {
        _who.Required = true;

        return this;
    }

    public GoingOptions Place() => Take(_place);

    public GoingOptions Until() => Take(_until);

    public GoingOptions Rate() => Take(_rate);

    public GoingOptions Agreement() => Take(_agreement);

    public GoingOptions Insured() => Take(_insured).Take(_currency);

    /// <summary>The options taken, with date and note, which all have.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in Take(_date).Take(_note)._taken)
        {
            command.Add(option);
        }
    }

    public SentTo To(ParseResult line) => new(Value(line, _who), Value(line, _place));

    public Going Terms(ParseResult line, MoveKind kind, Register register)
    {
        var currency = (_taken.Contains(_currency) ? line.GetValue(_currency) : null) ?? register.Settings.Currency;

        return new Going(kind, null)
        {
            Moved = line.GetValue(_date) ?? RecordedDate.None,
            Until = Value(line, _until) ?? RecordedDate.None,
            Rate = Value(line, _rate),
            Agreement = Value(line, _agreement),
            Value = _taken.Contains(_insured) ? _insured.Read(line, currency) : null,
            ValueCurrency = currency,
            Note = line.GetValue(_note),
        };
    }

    /// <summary>Sends them, and says so.</summary>
    public static Recorded Send(CommandContext context, Register register, UseCases.Choosing.ImpressionChoice choice, SentTo to, Going terms)
    {
        var sheets = register.SendAway.Run(choice, to, terms);
        var book = register.LookAround.Book();
        var (name, path) = (to.With is { } who ? Names.Of(register, who) : null, to.Place is { } place ? book.PathOf(Places.Find(book, place)) : null);
        var show = terms.Show is { } id ? register.LookAround.Show(id).Show : null;
        var day = context.DayOf(terms.Moved.IsKnown ? terms.Moved : null);
        var said = terms with { Until = terms.Until.IsKnown ? terms.Until : show?.Closes ?? RecordedDate.None };

        return new Recorded(MovesSaid.Sent(sheets, said, show?.ShownName ?? MovesSaid.Destination(name, path), day), json =>
        {
            json.WriteNumber("sheets", sheets);
            json.WriteString("kind", terms.Kind.Word);
            json.WriteString("with", name);
            json.WriteString("place", path);
            json.Whole("show", terms.Show);
            json.Date("date", day);
            json.Date("until", said.Until);
            json.Whole("share_in_hundredths_of_a_per_cent", terms.Rate);
            json.WriteString("agreement", terms.Agreement);
            json.Amount("insured", terms.Value, terms.ValueCurrency);
            json.WriteString("currency", terms.Value is null ? null : terms.ValueCurrency);
        });
    }

    private T? Value<T>(ParseResult line, Option<T> option) => _taken.Contains(option) ? line.GetValue(option) : default;

    private GoingOptions Take(Option option)
    {
        _taken.Add(option);

        return this;
    }
}
