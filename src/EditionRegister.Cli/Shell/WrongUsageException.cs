namespace EditionRegister.Cli;

/// <summary>A command line that only turns out to be wrong when it is obeyed: options that do not go together, an amount its currency cannot have.</summary>
internal sealed class WrongUsageException(string sentence) : Exception(sentence);
