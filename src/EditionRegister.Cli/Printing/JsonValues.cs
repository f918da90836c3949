using System.Text.Json;
using EditionRegister.Domain.Dates;

namespace EditionRegister.Cli;

/// <summary>How the machine form writes what JSON has no word for. Unknown is null.</summary>
internal static class JsonValues
{
    private const decimal MicrometresInAMillimetre = 1_000m;

    extension(Utf8JsonWriter json)
    {
        public void Whole(string name, long? number)
        {
            if (number is { } known)
            {
                json.WriteNumber(name, known);
            }
            else
            {
                json.WriteNull(name);
            }
        }

        /// <summary>The date as written, with the earliest and latest day it can mean.</summary>
        public void Date(string name, RecordedDate date)
        {
            if (!date.IsKnown)
            {
                json.WriteNull(name);

                return;
            }

            json.WriteStartObject(name);
            json.WriteString("text", date.Text);
            json.WriteString("earliest", date.EarliestText);
            json.WriteString("latest", date.LatestText);
            json.WriteEndObject();
        }

        /// <summary>The amount as text, so that no reader rounds it.</summary>
        public void Amount(string name, long? minorUnits, string? currency)
        {
            json.WriteString(name, PricesShown.Amount(minorUnits, currency));
        }

        /// <summary>Hundredths of a unit as a number with a point, or null.</summary>
        public void Hundredths(string name, long? hundredths)
        {
            if (hundredths is { } known)
            {
                json.WriteNumber(name, known / 100m);
            }
            else
            {
                json.WriteNull(name);
            }
        }

        public void Millimetres(string name, long? micrometres)
        {
            if (micrometres is { } known)
            {
                json.WriteNumber(name, known / MicrometresInAMillimetre);
            }
            else
            {
                json.WriteNull(name);
            }
        }

        public void Texts(string name, IEnumerable<string> texts)
        {
            json.WriteStartArray(name);

            foreach (var text in texts)
            {
                json.WriteStringValue(text);
            }

            json.WriteEndArray();
        }

        /// <summary>One object for each.</summary>
        public void Each<T>(string name, IEnumerable<T> things, Action<T> members)
        {
            json.WriteStartArray(name);

            foreach (var thing in things)
            {
                json.WriteStartObject();
                members(thing);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }
    }
}
