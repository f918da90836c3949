using EditionRegister.Domain.Sets;
using EditionRegister.Domain.Works;
using EditionRegister.Tui.Asking;
using EditionRegister.Tui.Hall;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Sets;

/// <summary>What is asked of a set of prints, and of its parts.</summary>
internal static class SetForms
{
    private const string Held = "What holds it";
    private const string SignedOn = "Signed on";
    private const string Note = "Note";
    private const string Part = "Part";

    /// <summary>Makes a work a set.</summary>
    public static Form Make(Desk desk, Work work) => new($"{Called.Work(work)} as a set of prints",
    [
        Field.OneOf(Held, SetForm.Words), Field.OneOf(SignedOn, SetForm.SignedOn), new Field(Note),
    ],
    async form => new Saved(SetsSaid.Made(await desk.Store.Do(register =>
    {
        register.MakeSet.Run(work.Id, form[Held]!, form[SignedOn]!, form[Note]);

        return register.LookAround.Work(work.Id);
    })), new SetPage(desk, work.Id)))
    {
        Name = "a set of prints",
        About = ["A portfolio, suite, book or print exchange. The sheets of this work are its copies, such as the colophons: each bears the number of the set. Its parts are works of their own, named next."],
        OwnEachTime = [Note],
    };

    public static Form Edit(Desk desk, SetSeen seen) => new($"The set {Called.Work(seen.Work)}",
    [
        Field.OneOf(Held, SetForm.Words, seen.Set.Form), Field.OneOf(SignedOn, SetForm.SignedOn, seen.Set.SignedOn), new Field(Note, seen.Set.Note ?? ""),
    ],
    async form => new Saved(SetsSaid.PutRight(await CorrectedAsync(desk, seen.Work.Id, form[Held], form[SignedOn], form[Note])))
    {
        Undo = new Undoing("the correction", async () => SetsSaid.PutRight(await CorrectedAsync(desk, seen.Work.Id, seen.Set.Form, seen.Set.SignedOn, seen.Set.Note))),
    })
    {
        Name = "edit a set",
    };

    /// <summary>Asks for a work by its title or its number.</summary>
    public static async Task<Opening?> AddPartAsync(Desk desk, SetSeen seen)
    {
        var works = await desk.Store.Do(register => register.LookAround.Works());
        var others = works.Where(work => work.Id != seen.Work.Id && seen.Set.Parts.All(part => part.Work != work.Id)).ToList();

        return new Form($"A part of {Called.Work(seen.Work)}",
        [
            new Field(Part)
            {
                IsNeeded = true,
                Form = "the title of a work, or its number",
                Known = typed => Fields.Matching([.. others.Select(work => work.ShownTitle)], typed),
                Wrong = typed => Find(others, typed).Count switch
                {
                    1 => null,
                    0 => $"No work is called “{typed}” that is not in the set already: type the title of a work, or its number.",
                    _ => $"Several works are called “{typed}”: type the number of the one that is meant, {string.Join(" or ", Find(others, typed).Select(work => Counted.Figure(work.Id)))}.",
                },
            },
        ],
        async form =>
        {
            var part = Find(others, form[Part]!)[0].Id;

            return new Saved(SetsSaid.PartsAdded(await Changed(desk, seen.Work.Id, register => register.ChangeSetParts.Add(seen.Work.Id, [part])), 1))
            {
                Undo = new Undoing("the part", async () => SetsSaid.PartRemoved(await Changed(desk, seen.Work.Id, register => register.ChangeSetParts.Remove(seen.Work.Id, part)), Find(others, form[Part]!)[0])),
            };
        })
        {
            Name = "a part of a set",
            OwnEachTime = [Part],
        };
    }

    /// <summary>Which part is taken off.</summary>
    public static Choice RemovePart(Desk desk, SetSeen seen) => new("Which part is taken off the set?",
    [
        .. seen.Set.Parts.Select(part => new Choosable(null, $"{Counted.Figure(part.Ordinal)}  {part.Title}", async () =>
        {
            var (work, was) = await desk.Store.Do(register =>
            {
                register.ChangeSetParts.Remove(seen.Work.Id, part.Work);

                return (register.LookAround.Work(seen.Work.Id), register.LookAround.Work(part.Work));
            });
            desk.Say(SetsSaid.PartRemoved(work, was), Tone.Good);

            return null;
        })),
    ]);

    private static Task<Work> CorrectedAsync(Desk desk, long set, string? held, string? signedOn, string? note) =>
        Changed(desk, set, register => register.EditSet.Run(set, held, signedOn, note));

    private static List<Work> Find(IReadOnlyList<Work> works, string typed) =>
        [.. works.Where(work => Counted.Figure(work.Id) == typed.Trim() || string.Equals(work.ShownTitle, typed.Trim(), StringComparison.OrdinalIgnoreCase))];

    private static Task<Work> Changed(Desk desk, long set, Action<UseCases.Register> change) => desk.Store.Do(register =>
    {
        change(register);

        return register.LookAround.Work(set);
    });
}
