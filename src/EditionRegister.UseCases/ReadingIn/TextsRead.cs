namespace EditionRegister.UseCases.ReadingIn;

/// <summary>How the words of a file were read: each text once, in the order of the file, and how many there are in all.</summary>
public sealed class TextsRead
{
    private readonly HashSet<(string Header, string Text, string As)> _met = [];
    private readonly List<(string Header, string Text, string As)> _shown = [];

    /// <summary>Cells whose words were read as something plainer.</summary>
    public int Cells { get; private set; }

    /// <summary>Different texts among them.</summary>
    public IReadOnlyList<(string Header, string Text, string As)> Different => _shown;

    public void Add(string header, string text, string readAs)
    {
        Cells++;

        if (_met.Add((header, text, readAs)))
        {
            _shown.Add((header, text, readAs));
        }
    }
}
