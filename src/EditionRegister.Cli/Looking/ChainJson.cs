using System.Text.Json;
using EditionRegister.Domain.Chains;
using EditionRegister.Domain.Impressions;
using EditionRegister.Domain.Works;

namespace EditionRegister.Cli;

/// <summary>The two chains of a sheet, for machines.</summary>
internal static class ChainJson
{
    public static void Write(Utf8JsonWriter json, Work work, Impression sheet)
    {
        json.Each("whereabouts", sheet.Whereabouts, link => Move(json, work, link));
        json.Each("ownership", sheet.Ownership, link => Transfer(json, work, link));
        json.Each("reservations", sheet.Reservations, kept => Reserved(json, work, kept));
    }

    private static void Move(Utf8JsonWriter json, Work work, WhereaboutsLink link)
    {
        json.WriteNumber("step", link.Ordinal);
        json.WriteString("kind", link.Kind);
        json.Date("moved", link.Moved);
        json.WriteString("state", link.To.State);
        json.WriteString("place", link.To.Place is { } place ? work.Book.PathOf(place) : null);
        json.WriteString("with", link.To.Holder is { } holder ? work.Book.NameOf(holder) : null);
        json.Date("until", link.Until);
        json.Whole("share_in_hundredths_of_a_per_cent", link.Rate);
        json.WriteString("agreement", link.Agreement);
        json.Amount("insured", link.Value, link.ValueCurrency);
        json.WriteString("insured_currency", link.ValueCurrency);
        json.Whole("show", link.Show);
        json.WriteString("note", link.Note);
    }

    private static void Reserved(Utf8JsonWriter json, Work work, Reservation kept)
    {
        json.WriteString("standing", kept.Standing);
        json.WriteString("for", kept.Person is { } person ? work.Book.NameOf(person) : null);
        json.Date("made", kept.Made);
        json.Date("until", kept.Until);
        json.WriteString("note", kept.Note);
    }

    private static void Transfer(Utf8JsonWriter json, Work work, OwnershipLink link)
    {
        json.WriteNumber("step", link.Ordinal);
        json.WriteString("kind", link.Kind);
        json.Date("passed", link.Passed);
        json.WriteString("owner", link.To.Person is { } owner ? work.Book.NameOf(owner) : null);
        json.Amount("price", link.Price, link.Currency);
        json.Amount("net", link.Net, link.Currency);
        json.WriteString("currency", link.Currency);
        json.WriteString("agent", link.Agent is { } agent ? work.Book.NameOf(agent) : null);
        json.WriteString("note", link.Note);
    }
}
