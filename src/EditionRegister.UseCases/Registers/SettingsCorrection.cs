using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Sizes;

namespace EditionRegister.UseCases.Registers;

/// <summary>What is to be changed about a register's settings; null leaves a setting as it is.</summary>
public sealed record SettingsCorrection
{
    public string? Name { get; init; }

    /// <summary>Empty prints no links.</summary>
    public string? BaseUrl { get; init; }

    public PageSize? Page { get; init; }

    public string? Currency { get; init; }

    /// <summary>"mm" or "in".</summary>
    public string? Units { get; init; }

    public SizeWriting? SizeWriting { get; init; }

    /// <summary>Who writes in this register, by name or number; empty is nobody named.</summary>
    public string? Writer { get; init; }

    /// <summary>Millimetres.</summary>
    public double? PrinterRight { get; init; }

    /// <summary>Millimetres.</summary>
    public double? PrinterDown { get; init; }
}
