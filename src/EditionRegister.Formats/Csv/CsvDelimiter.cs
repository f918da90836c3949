namespace EditionRegister.Formats.Csv;

/// <summary>Which of comma and semicolon parts the fields, as the header line says outside quotes.</summary>
/// <remarks>CsvHelper can detect it too, but weighs several lines: a decimal comma in the rows would be heard.</remarks>
internal static class CsvDelimiter
{
    public static char Of(ReadOnlySpan<byte> text)
    {
        var (commas, semicolons, quoted) = (0, 0, false);

        foreach (var b in text.TrimStart("\r\n"u8))
        {
            if (!quoted && (b == (byte)'\r' || b == (byte)'\n'))
            {
                break;
            }

            quoted ^= b == '"';
            commas += !quoted && b == ',' ? 1 : 0;
            semicolons += !quoted && b == ';' ? 1 : 0;
        }

        return semicolons > commas ? ';' : ',';
    }
}
