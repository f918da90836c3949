using EditionRegister.Tui.Pages;

namespace EditionRegister.Tui.Hall;

/// <summary>One room: its first page, and the pages opened upon it.</summary>
internal sealed class Room(RoomName name, Func<Page> first)
{
    private readonly Stack<Page> _open = new();

    public RoomName Name { get; } = name;

    /// <summary>The page that lies on top.</summary>
    public Page Page
    {
        get
        {
            if (_open.Count == 0)
            {
                _open.Push(first());
            }

            return _open.Peek();
        }
    }

    /// <summary>The titles from the first page to the one on top.</summary>
    public IEnumerable<string> Titles => _open.Reverse().Select(page => page.Title);

    public void Open(Page page)
    {
        _ = Page;
        _open.Push(page);
    }

    /// <summary>Takes the top page away; false where only the first is left.</summary>
    public bool Back()
    {
        if (_open.Count <= 1)
        {
            return false;
        }

        _open.Pop();
        return true;
    }
}
