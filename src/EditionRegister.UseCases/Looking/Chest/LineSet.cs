using System.Numerics;

namespace EditionRegister.UseCases.Looking;

/// <summary>Some of the lines of a list, a bit for each.</summary>
internal sealed class LineSet(int lines)
{
    private readonly ulong[] _bits = new ulong[(lines + 63) / 64];

    public void Add(int line) => _bits[line >> 6] |= 1UL << (line & 63);

    /// <summary>Keeps what is in the other too.</summary>
    public void KeepOnly(LineSet other)
    {
        for (var i = 0; i < _bits.Length; i++)
        {
            _bits[i] &= other._bits[i];
        }
    }

    /// <summary>Adds what is in the other.</summary>
    public void AddAll(LineSet other)
    {
        for (var i = 0; i < _bits.Length; i++)
        {
            _bits[i] |= other._bits[i];
        }
    }

    /// <summary>The lines in order.</summary>
    public int[] ToArray()
    {
        var count = 0;

        foreach (var bits in _bits)
        {
            count += BitOperations.PopCount(bits);
        }

        var lines = new int[count];
        var at = 0;

        for (var i = 0; i < _bits.Length; i++)
        {
            for (var left = _bits[i]; left != 0; left &= left - 1)
            {
                lines[at++] = (i << 6) + BitOperations.TrailingZeroCount(left);
            }
        }

        return lines;
    }
}
