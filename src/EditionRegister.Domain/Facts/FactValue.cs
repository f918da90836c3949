using System.Globalization;

namespace EditionRegister.Domain.Facts;

/// <summary>What a fact can say: nothing, a whole number, or a text. The default is nothing.</summary>
public readonly struct FactValue : IEquatable<FactValue>
{
    private readonly bool _isNumber;
    private readonly long _number;

    private FactValue(long number) => (_isNumber, _number, Text) = (true, number, null);

    private FactValue(string? text) => (_isNumber, _number, Text) = (false, 0, text);

    public static FactValue Null => default;

    public long? Number => _isNumber ? _number : null;

    public string? Text { get; }

    public bool IsNull => !_isNumber && Text is null;

    public static implicit operator FactValue(long number) => new(number);

    public static implicit operator FactValue(int number) => new((long)number);

    public static implicit operator FactValue(long? number) => number is { } n ? new(n) : default;

    public static implicit operator FactValue(int? number) => number is { } n ? new((long)n) : default;

    public static implicit operator FactValue(string? text) => new(text);

    public static bool operator ==(FactValue left, FactValue right) => left.Equals(right);

    public static bool operator !=(FactValue left, FactValue right) => !left.Equals(right);

    public bool Equals(FactValue other) =>
        _isNumber == other._isNumber && _number == other._number && string.Equals(Text, other.Text, StringComparison.Ordinal);

    public override bool Equals(object? obj) => obj is FactValue other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(_isNumber, _number, Text);

    public override string ToString() => _isNumber ? _number.ToString(CultureInfo.InvariantCulture) : Text ?? "nothing";
}
