using EditionRegister.Tui.Hall;
using EditionRegister.UseCases.Looking;

namespace EditionRegister.Tui.Logbook;

/// <summary>The entries that are looked at, newest first: read in blocks when they come into sight, a few blocks kept, whatever the logbook's length.</summary>
/// <param name="desk">Where they are read.</param>
/// <param name="wanted">Which entries; nothing asked for is all of them.</param>
/// <param name="all">How many entries the logbook had when this was begun; what is written later is not looked at.</param>
internal sealed class EntryBlocks(Desk desk, LogbookWanted wanted, long all)
{
    public const int Size = 100;
    private const int Kept = 12;
    private const int MostAsked = 4;

    // Far enough ahead that a screen is seldom waited for.
    private const int Ahead = 40;

    private readonly List<EntryBlock> _kept = [];
    private readonly List<int> _asked = [];

    // Where each block begins, as far as that is known; with nothing asked for it follows from the entries' numbers.
    private readonly List<long?> _starts = [all + 1];
    private int _found;
    private bool _isEnded;
    private volatile bool _isDropped;
    private bool _hasFailed;

    private bool IsWhole { get; } = wanted == new LogbookWanted();

    /// <summary>What is being read; done when nothing is.</summary>
    public Task Reading { get; private set; } = Task.CompletedTask;

    /// <summary>Rows there are, with one for those that may follow.</summary>
    public int Count => IsWhole ? (int)Math.Min(all, int.MaxValue) : _found + (_isEnded ? 0 : 1);

    public bool HasMore => !IsWhole && !_isEnded;

    /// <summary>True when one of the entries read so far says who wrote it.</summary>
    public bool NamesSomeone { get; private set; }

    /// <summary>The entry of a row, or that it is not read yet: then it is asked for.</summary>
    public EntryFound At(int row)
    {
        var block = row / Size;

        if (Held(block) is not { } held)
        {
            Ask(block);
            return EntryFound.NotYet;
        }

        AskAhead(row);

        return held.Find(row, IsWhole ? all - row : null);
    }

    /// <summary>Reads the block a row is in, at once.</summary>
    /// <exception cref="Domain.RefusedException">The register cannot be read.</exception>
    public Task ReadAsync(int row) => ReadBlockAsync(row / Size);

    /// <summary>Asks for a block; what came into sight last is read first.</summary>
    public void Ask(int block)
    {
        if (_asked.Contains(block) || _hasFailed || (!IsWhole && block >= _starts.Count))
        {
            return;
        }

        _asked.Add(block);

        if (_asked.Count > MostAsked)
        {
            _asked.RemoveAt(0);
        }

        if (Reading.IsCompleted)
        {
            Reading = ReadAskedAsync();
            desk.InBackground(() => Reading);
        }
    }

    /// <summary>Others are looked at now: what was asked for and is not read yet stays unread.</summary>
    public void Drop() => _isDropped = true;

    private async Task ReadAskedAsync()
    {
        while (_asked is [.., var block] && !_isDropped)
        {
            await ReadBlockAsync(block);
            _asked.Remove(block);
            desk.Redraw();
        }
    }

    private async Task ReadBlockAsync(int block)
    {
        if (Held(block) is not null)
        {
            return;
        }

        var asked = wanted with { Before = IsWhole ? all + 1 - ((long)block * Size) : _starts[block], Take = Size };
        _hasFailed = true;

        if (await desk.Store.Do(register => _isDropped ? null : EntryBlock.Read(register, block, asked)) is { } read)
        {
            Keep(read);
        }

        _hasFailed = false;
    }

    private void Keep(EntryBlock read)
    {
        _kept.Add(read);
        NamesSomeone |= read.Entries.Any(entry => entry.By is not null);

        if (_kept.Count > Kept)
        {
            _kept.RemoveAt(0);
        }

        if (!IsWhole && read.At == _starts.Count - 1)
        {
            _found = (read.At * Size) + read.Entries.Count;
            _isEnded = read.Next is null;

            if (read.Next is { } next)
            {
                _starts.Add(next);
            }
        }
    }

    private EntryBlock? Held(int block)
    {
        if (_kept.FindLastIndex(kept => kept.At == block) is >= 0 and var at)
        {
            var held = _kept[at];

            // What is looked at is let go last.
            if (at < _kept.Count - 1)
            {
                _kept.RemoveAt(at);
                _kept.Add(held);
            }

            return held;
        }

        return null;
    }

    private void AskAhead(int row)
    {
        var (block, within) = (row / Size, row % Size);
        var next = within >= Size - Ahead ? block + 1 : within < Ahead ? block - 1 : block;

        if (next >= 0 && (long)next * Size < Count && !_kept.Exists(kept => kept.At == next))
        {
            Ask(next);
        }
    }
}
