using EditionRegister.Domain.Documents;
using EditionRegister.Domain.Text;
using EditionRegister.Tui.Pages;
using EditionRegister.UseCases.Documents;

namespace EditionRegister.Tui.Documents;

/// <summary>A certificate in lines of text, in the order in which it stands on paper.</summary>
internal static class CertificateText
{
    /// <summary>What cannot be made stands first, so that it is not overlooked.</summary>
    public static IReadOnlyList<PreviewLeaf> Leaves(IEnumerable<CertificatePreview> certificates) =>
    [
        .. certificates.OrderBy(certificate => certificate.Statement is not null)
            .Select(certificate => new PreviewLeaf(certificate.Code, width => Of(certificate, width), certificate.Statement is not null)),
    ];

    /// <summary>How to go on with the others, where there are any.</summary>
    public static string LeaveOut(int refused, int all) => refused < all ? $" o leaves {(refused == 1 ? "it" : "them")} out." : "";

    private static IEnumerable<Line> Of(CertificatePreview certificate, int width) =>
        certificate.Statement is { } statement ? Of(statement, certificate.Head, width) : Wrap.Of(certificate.Refusal ?? "", width).Select(line => Line.Of(line, Tone.Bad));

    private static IEnumerable<Line> Of(CertificateStatement statement, LogbookHead? head, int width)
    {
        var labels = Math.Min(24, statement.Lines.Select(line => TextWidth.Of(SafeText.Show(line.Label))).DefaultIfEmpty(1).Max());

        return
        [
            .. Wrap.Of(statement.Heading, width).Select(line => Line.Of(line, Tone.Strong)),
            Line.Empty,
            .. statement.Lines.SelectMany(line => SideBySide.Fact(line.Label, line.Value, labels, width)),
            .. SideBySide.Fact("QR code", statement.Link ?? "none: the register has no address for links", labels, width),
            Line.Empty,
            .. Wrap.Of($"To be filled in by hand: {statement.SignatureLabel}; {statement.DateLabel}.", width).Select(line => (Line)line),
            Line.Empty,
            .. Wrap.Of(statement.Caution, width).Select(line => Line.Of(line, Tone.Quiet)),
            Line.Empty,
            .. Wrap.Of($"{statement.LogbookSentence} {Head(head)}", width).Select(line => Line.Of(line, Tone.Quiet)),
        ];
    }

    private static string Head(LogbookHead? head) =>
        head is null ? "(Its number and its head are known when the certificate is issued, and printed here.)" : $"{Counted.Figure(head.N)}, {head.Head}";
}
