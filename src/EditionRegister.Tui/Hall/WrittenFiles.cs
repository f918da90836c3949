namespace EditionRegister.Tui.Hall;

/// <summary>The files written since the program was opened, by their whole paths, the latest first.</summary>
internal sealed class WrittenFiles
{
    private readonly List<string> _files = [];

    public IReadOnlyList<string> Latest => _files;

    /// <summary>A file written again stands where the latest stand, once.</summary>
    public void Add(IReadOnlyList<string> files)
    {
        _files.RemoveAll(files.Contains);
        _files.InsertRange(0, files);
    }
}
