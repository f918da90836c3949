using System.CommandLine;
using EditionRegister.Domain.Impressions;

namespace EditionRegister.Cli;

/// <summary>What someone read on a sheet.</summary>
internal sealed class InscriptionOptions
{
    private readonly Option<bool> _asSpelled = Opt.Flag("--as-spelled", "The pencil says exactly the number the register spells, and the title.");
    private readonly Option<string?> _pencilled = Opt.SheetNumber("--pencilled", "The number as it stands on the sheet. One sheet at a time.");
    private readonly Option<string?> _titled = Opt.Text("--titled", "TEXT", "The title as it stands on the sheet.");
    private readonly Option<string?> _signed = Opt.Word("--signed", ["yes", "no", "unknown"], "Whether it is signed by hand.");
    private readonly Option<string?> _signature = Opt.Text("--signature", "TEXT", "The signature as it stands on the sheet.");
    private readonly Option<string?> _inscription = Opt.Words("--inscription", "TEXT", "Anything else written, stamped or embossed, letter by letter.", (text, own, _) => InscriptionSaid.OfTyped(text, own));
    private readonly Option<string?> _side = Opt.Word("--side", ["front", "back", "unknown"], "The side of the inscription. Else front.");
    private readonly Option<string?> _manner = Opt.Word("--manner", ["written", "stamped", "embossed", "unknown"], "How the inscription was made. Else written.");
    private readonly Option<string?> _position = Opt.Text("--position", "TEXT", "Where the inscription stands: lower left.");
    private readonly Option<string?> _condition = Opt.Text("--condition", "TEXT", "How the sheet is, in words.");

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _asSpelled, _pencilled, _titled, _signed, _signature, _inscription, _side, _manner, _position, _condition })
        {
            command.Add(option);
        }
    }

    /// <exception cref="WrongUsageException">A side, manner or position of no inscription.</exception>
    public WhatStandsOnIt Read(ParseResult line)
    {
        if (line.GetValue(_inscription) is null && (line.GetValue(_side) ?? line.GetValue(_manner) ?? line.GetValue(_position)) is not null)
        {
            throw new WrongUsageException("--side, --manner and --position say where and how an inscription stands, so they need --inscription.");
        }

        return new WhatStandsOnIt
        {
            AsSpelled = line.GetValue(_asSpelled),
            Pencilled = line.GetValue(_pencilled),
            Titled = line.GetValue(_titled),
            Signed = line.GetValue(_signed),
            Signature = line.GetValue(_signature),
            Inscription = line.GetValue(_inscription),
            Side = line.GetValue(_side) ?? "front",
            Manner = line.GetValue(_manner) ?? "written",
            Position = line.GetValue(_position),
            Condition = line.GetValue(_condition),
        };
    }
}
