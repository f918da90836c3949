using System.CommandLine;
using EditionRegister.Domain.Editions;
using EditionRegister.UseCases.Moves;
using EditionRegister.UseCases.People;
using EditionRegister.UseCases.ReadingIn;

namespace EditionRegister.Cli;

/// <summary><c>edreg known</c>: what is known of an old edition.</summary>
internal static class KnownCommand
{
    public static Command Create(CommandContext context)
    {
        var work = Arg.Id("WORK", "The number of the work.");
        var numbers = Opt.Ranges("--numbers", "NUMBERS", "Which numbers of one numbering: 1-14, 17 or A/P I-III.");
        numbers.Required = true;
        var size = Opt.EditionSize("--size", "How many numbers there are: 30, or at least 30 where nobody is sure. Said once.");
        var sizeUnknown = Opt.Flag("--size-unknown", "Nobody knows how many numbers there are.");
        var statement = Opt.Statement("The edition in somebody's words, kept as written: edition of 75 plus 10 artist's proofs. They say the size where --size does not.");
        var sold = Opt.Flag("--sold", "They were sold before the register, to buyers not known.");
        var place = Opt.Text("--place", "PLACE", "They lie here.");
        var with = Opt.Text("--with", "WHO", "Somebody has them.");
        var nowhere = Opt.Flag("--place-unknown", "They are there, and nobody knows where.");
        var owner = Opt.Text("--owner", "WHO", "Whose they are. Else the maker's.");
        var paper = Opt.Paper("--paper", "What they are printed on.");
        var signed = Opt.Word("--signed", ["yes", "no", "unknown"], "Whether they are signed by hand. Else unknown.");
        var note = Opt.Text("--note", "TEXT", "Anything else.");
        CommandWithExample command = new("known", "Records what is known of an old edition of yours, stretch by stretch: numbers sold before the register, and sheets that are still there. It may be repeated.", "edreg known 3 --size 30 --numbers 1-14 --sold")
        {
            work, numbers, size, sizeUnknown, statement, sold, place, with, nowhere, owner, paper, signed, note,
        };

        command.SetAction(line => context.Record(line, register =>
        {
            var id = line.GetValue(work)!.Value;
            var part = (KnownPart.Read(line.GetRequiredValue(numbers)!) with { IsSizeUnknown = line.GetValue(sizeUnknown) }).OfSize(line.GetValue(size)).Stating(line.GetValue(statement), register.LookAround.OwnWords());
            SentTo where = new(line.GetValue(with), line.GetValue(place));

            if (line.GetValue(size) is not null && line.GetValue(sizeUnknown))
            {
                throw new WrongUsageException("--size and --size-unknown: one of the two.");
            }

            if (new[] { line.GetValue(sold), where is not { With: null, Place: null }, line.GetValue(nowhere) }.Count(said => said) != 1)
            {
                throw new WrongUsageException("Say what is known of them: --sold, or where they are with --place, --with or --place-unknown.");
            }

            var codes = line.GetValue(sold) ? [] : register.KnownNumbers.Here(id, part, where, new KnownSheets
            {
                Owner = line.GetValue(owner),
                Paper = line.GetValue(paper),
                Signed = line.GetValue(signed) ?? "unknown",
                Note = line.GetValue(note),
            });
            var gone = line.GetValue(sold) ? register.KnownNumbers.Sold(id, part, line.GetValue(note)) : 0;
            var book = register.LookAround.Book();
            var (name, path) = (where.With is { } who ? Names.Of(register, who) : null, where.Place is { } typed ? book.PathOf(Places.Find(book, typed)) : null);
            var title = Called.Work(register.LookAround.Work(id));

            return new Recorded(gone > 0 ? MovesSaid.KnownSold(gone, title) : MovesSaid.KnownHere(codes.Count, title, MovesSaid.Destination(name, path)), json =>
            {
                json.WriteNumber("work", id);
                json.WriteNumber("sold", gone);
                json.Texts("codes", codes);
            });
        }));

        return command;
    }
}
