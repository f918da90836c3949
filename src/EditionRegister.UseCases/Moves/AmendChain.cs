using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Codes;
using EditionRegister.Domain.Facts;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;
using EditionRegister.Store;
using EditionRegister.Store.Logbook;
using EditionRegister.Store.Reading;
using EditionRegister.UseCases.Choosing;
using EditionRegister.UseCases.People;

namespace EditionRegister.UseCases.Moves;

/// <summary>
/// Puts one step of a sheet's chain right, puts one in between that was learned of late, or takes one out that never was; the steps after it are
/// set anew in the same entry.
/// </summary>
public sealed class AmendChain(RegisterStore store)
{
    /// <param name="code">The sheet.</param>
    /// <param name="where">Which step, and whether it is put right, followed by a new one, or taken out.</param>
    /// <param name="to">Where it ended, as a person names it; null leaves that as it is.</param>
    /// <param name="right">The rest.</param>
    /// <param name="seen">The entry that had last written the step when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="MendingRefusals"/>, or changed-meanwhile.</exception>
    public bool Move(string code, AmendedStep where, SentTo? to, MoveCorrection right, long? seen = null) => store.Write("amend-move", writing =>
    {
        var (work, sheet) = Find(writing.Read, code);
        var meant = right with { To = to is null ? right.To : PositionOf(writing.Read, to) };

        if (where.Step >= 1 && where.Step <= sheet.Whereabouts.Count)
        {
            AsSeen(writing, "whereabouts", sheet.Whereabouts[where.Step - 1].Id, seen, MoveMending.Changes(meant), "kind");
        }

        var deed = writing.On(Root.Work(work.Id));

        switch (where.What)
        {
            case Amending.TakeOut:
                MoveMending.TakeOut(work, sheet, where.Step, deed);
                break;
            case Amending.PutAfter:
                MoveMending.PutBetween(work, sheet, where.Step, meant, deed);
                break;
            default:
                MoveMending.PutRight(work, sheet, where.Step, meant, deed);
                break;
        }

        return true;
    });

    /// <param name="code">The sheet.</param>
    /// <param name="where">Which step, and whether it is put right, followed by a new one, or taken out.</param>
    /// <param name="people">Whose it was then and who acted, as a person names them.</param>
    /// <param name="right">The rest.</param>
    /// <param name="seen">The entry that had last written the step when the caller looked at it.</param>
    /// <exception cref="Domain.RefusedException">One of <see cref="MendingRefusals"/>, or changed-meanwhile.</exception>
    public bool Transfer(string code, AmendedStep where, AmendedPeople people, TransferCorrection right, long? seen = null) => store.Write("amend-transfer", writing =>
    {
        var (work, sheet) = Find(writing.Read, code);
        var meant = right with
        {
            To = people.To is { } owner ? Owner.Known(Persons.Find(writing.Read.Book, owner)) : people.IsToUnknown ? Owner.Unknown : right.To,
            Agent = people.Agent is { } agent ? Persons.Find(writing.Read.Book, agent) : right.Agent,
        };

        if (where.Step >= 1 && where.Step <= sheet.Ownership.Count)
        {
            AsSeen(writing, "ownership", sheet.Ownership[where.Step - 1].Id, seen, TransferMending.Changes(meant), "kind");
        }

        var deed = writing.On(Root.Work(work.Id));

        switch (where.What)
        {
            case Amending.TakeOut:
                TransferMending.TakeOut(work, sheet, where.Step, deed);
                break;
            case Amending.PutAfter:
                TransferMending.PutBetween(work, sheet, where.Step, meant, deed);
                break;
            default:
                TransferMending.PutRight(work, sheet, where.Step, meant, deed);
                break;
        }

        return true;
    });

    private static (Work Work, Impression Sheet) Find(Reader reader, string code)
    {
        // Not a list of several: a chain is one sheet's own.
        var one = RegisterCode.TryParse(code, out var read) ? read.ToString() : throw ImpressionRefusals.NotACode(code);
        var chosen = ImpressionsChosen.Find(reader, ImpressionChoice.OfCode(one))[0];

        return (chosen.Work, chosen.Sheets[0]);
    }

    private static Position PositionOf(Reader reader, SentTo to)
    {
        long? with = to.With is { } who ? Persons.Find(reader.Book, who) : null;

        return to.Place is { } path ? Position.InPlace(Places.Find(reader.Book, path)) with { Holder = with }
            : with is { } holder ? Position.With(holder)
            : Position.Unknown;
    }

    /// <summary>What is to change is compared fact by fact; where a step is put in or taken out, the one beside it.</summary>
    private static void AsSeen(Writing writing, string table, long id, long? seen, IEnumerable<(string Fact, FactValue Value)> changes, string otherwise)
    {
        foreach (var (fact, value) in changes.DefaultIfEmpty((otherwise, FactValue.Null)))
        {
            writing.StillAsSeen(table, id, seen, fact, value);
        }
    }
}

/// <summary>What is done about a step.</summary>
public enum Amending
{
    PutRight,
    PutAfter,
    TakeOut,
}

/// <summary>A step of a chain, from one, and what is done about it: a new one is put after it.</summary>
public sealed record AmendedStep(int Step, Amending What = Amending.PutRight);

/// <summary>People of a transfer as a person names them; null leaves them as they are.</summary>
public sealed record AmendedPeople(string? To = null, bool IsToUnknown = false, string? Agent = null);
