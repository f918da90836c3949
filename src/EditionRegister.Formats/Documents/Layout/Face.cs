namespace EditionRegister.Formats.Documents.Layout;

/// <summary>The faces a document may be set in.</summary>
internal enum Face
{
    Serif,
    SerifItalic,
    SerifSemiBold,
    Sans,
    SansSemiBold,
}

/// <summary>How dark something is printed.</summary>
internal enum Ink
{
    Black,
    Grey,
    Pale,
}
