using EditionRegister.Formats.Documents.Layout;

namespace EditionRegister.Formats.Documents.Certificates;

/// <summary>How each part of a certificate is set.</summary>
internal static class CertificateSettings
{
    /// <summary>Points: values are never set smaller; what does not fit then goes on a second page.</summary>
    public const double ValueFloor = 8.5;

    public const double ValueSize = 11;

    public static Setting Heading { get; } = new(Face.SansSemiBold, 10.5, Ink.Grey, Tracking: 0.5);

    public static Setting Caption { get; } = new(Face.Sans, 8, Ink.Grey, Tracking: 0.1);

    public static Setting Maker { get; } = new(Face.Serif, 13);

    public static Setting Code { get; } = new(Face.SansSemiBold, 13, Tracking: 0.6);

    public static Setting Under { get; } = new(Face.Sans, 7.5, Ink.Grey, Tracking: 0.1);

    public static Setting Caution { get; } = new(Face.SerifItalic, 7.5, Ink.Grey);

    public static Setting Logbook { get; } = new(Face.Sans, 6.5, Ink.Grey);

    public static Setting Head { get; } = new(Face.Sans, 7, Ink.Black, Tracking: 0.1);

    public static Setting Title(double size) => new(Face.SerifItalic, size);

    public static Setting Number(double size) => new(Face.Serif, size);

    public static Setting Value(double size) => new(Face.Serif, size);
}
