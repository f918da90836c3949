using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace EditionRegister.Domain.Integrity;

/// <summary>
/// Short names for the findings of one check, the same in every run while their facts stay: six letters and digits that are not
/// mistaken for each other, more where two would be called the same.
/// </summary>
public sealed class FindingHandles
{
    private const string Alphabet = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private const int Shortest = 6;

    private readonly Dictionary<string, string> _given = new(StringComparer.Ordinal);

    /// <summary>All that makes a finding this one: rule, subject and the whole message.</summary>
    public static string WordsOf(Finding finding) => WordsOf(finding.Rule, finding.Subject.Kind, finding.Subject.Id, finding.Message);

    public static string WordsOf(string rule, string subjectKind, long subjectId, string message) =>
        string.Join('\0', rule, subjectKind, subjectId.ToString(CultureInfo.InvariantCulture), message);

    /// <summary>The handle of a finding that has these words; the same words are always called the same.</summary>
    public string Give(string words)
    {
        var whole = Spelled(SHA256.HashData(Encoding.UTF8.GetBytes(words)));
        var length = Shortest;

        while (_given.TryGetValue(whole[..length], out var other) && other != words)
        {
            length++;
        }

        _given[whole[..length]] = words;

        return whole[..length];
    }

    /// <summary>Five bits a letter, from the first bit on; the last that are fewer than five are left out.</summary>
    private static string Spelled(byte[] hash)
    {
        StringBuilder spelled = new();

        for (var bit = 0; bit + 5 <= hash.Length * 8; bit += 5)
        {
            var two = (hash[bit / 8] << 8) | (bit / 8 + 1 < hash.Length ? hash[(bit / 8) + 1] : 0);
            spelled.Append(Alphabet[(two >> (11 - (bit % 8))) & 31]);
        }

        return spelled.ToString();
    }
}
