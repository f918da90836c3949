using System.Globalization;

namespace EditionRegister.Bench.Readings;

/// <summary>Says beside a figure what was aimed at, and by how much it was missed.</summary>
internal static class Aim
{
    /// <summary>A figure that should be no lower.</summary>
    public static string AtLeast(double aim, double figure, string unit = " %") =>
        string.Create(CultureInfo.InvariantCulture, $"aim {aim:#,0.##}{unit}: {(figure >= aim ? "met" : $"missed by {aim - figure:#,0.0}")}");

    /// <summary>A figure that should be no higher.</summary>
    public static string AtMost(double aim, double figure, string unit = " %") =>
        string.Create(CultureInfo.InvariantCulture, $"aim at most {aim:#,0.##}{unit}: {(figure <= aim ? "met" : $"missed by {figure - aim:#,0.0}")}");
}
