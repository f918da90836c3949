namespace EditionRegister.UseCases.ReadingIn;

/// <summary>The words of one cell, and what they were read as: “Épreuve d'artiste 3/10” read as artist's proof 3 of 10.</summary>
public sealed record TextRead(string Column, string Text, string ReadAs)
{
    public override string ToString() => $"“{Text.Trim()}” read as {ReadAs}";
}
