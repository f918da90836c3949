namespace EditionRegister.Domain.Facts;

/// <summary>An edition in somebody's words.</summary>
public static class StatementFacts
{
    extension(Deed deed)
    {
        /// <summary>Keeps the words; where there are none, what is kept stays.</summary>
        public void SetStatement(long edition, string? words)
        {
            if (!string.IsNullOrWhiteSpace(words))
            {
                deed.Set("edition", edition, ("statement", words));
            }
        }
    }
}
