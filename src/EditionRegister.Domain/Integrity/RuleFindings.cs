namespace EditionRegister.Domain.Integrity;

/// <summary>A rule's findings carry its name and its basis.</summary>
internal static class RuleFindings
{
    extension(IRule rule)
    {
        public Finding Contradiction(Subject subject, string message, string remedy) => rule.Find(Severity.Contradiction, subject, message, remedy);

        public Finding Query(Subject subject, string message, string remedy) => rule.Find(Severity.Query, subject, message, remedy);

        public Finding Note(Subject subject, string message, string remedy) => rule.Find(Severity.Note, subject, message, remedy);

        public Finding Find(Severity severity, Subject subject, string message, string remedy) =>
            new(rule.Name, severity, subject, message, rule.Basis, remedy);
    }
}
