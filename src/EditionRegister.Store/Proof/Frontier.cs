namespace EditionRegister.Store.Proof;

/// <summary>
/// The right edge of a growing Merkle tree (RFC 6962): the roots of its full subtrees, largest first,
/// which is all that is needed to append an entry and to know the root.
/// </summary>
public sealed class Frontier
{
    private readonly List<Subtree> _subtrees = [];

    /// <summary>How many entries the tree holds.</summary>
    public long Size { get; private set; }

    /// <summary>What to keep so that <see cref="Load"/> can go on from here.</summary>
    public IReadOnlyList<Subtree> Subtrees => _subtrees;

    /// <exception cref="ArgumentException">Not subtrees of one tree, largest first.</exception>
    public static Frontier Load(IEnumerable<Subtree> subtrees)
    {
        Frontier frontier = new();

        foreach (var subtree in subtrees)
        {
            if (subtree.Level is < 0 or > 61 || subtree.Level >= (frontier._subtrees is [.., var last] ? last.Level : int.MaxValue))
            {
                throw new ArgumentException("The saved frontier is not a list of full subtrees, largest first.", nameof(subtrees));
            }

            EnsureHash(subtree.Hash);
            frontier._subtrees.Add(subtree);
            frontier.Size += 1L << subtree.Level;
        }

        return frontier;
    }

    /// <exception cref="ArgumentException">Not the 32 bytes of a leaf hash.</exception>
    public void Append(byte[] leafHash)
    {
        EnsureHash(leafHash);
        Subtree grown = new(0, leafHash);

        while (_subtrees is [.., var last] && last.Level == grown.Level)
        {
            _subtrees.RemoveAt(_subtrees.Count - 1);
            grown = new Subtree(grown.Level + 1, MerkleTree.NodeHash(last.Hash, grown.Hash));
        }

        _subtrees.Add(grown);
        Size++;
    }

    /// <summary>The tree root over all entries so far.</summary>
    public byte[] Root()
    {
        if (_subtrees is not [.., var smallest])
        {
            return MerkleTree.EmptyRoot();
        }

        var root = smallest.Hash;

        for (var i = _subtrees.Count - 2; i >= 0; i--)
        {
            root = MerkleTree.NodeHash(_subtrees[i].Hash, root);
        }

        return root;
    }

    private static void EnsureHash(byte[] hash)
    {
        if (hash.Length != MerkleTree.HashLength)
        {
            throw new ArgumentException($"A hash has {MerkleTree.HashLength} bytes, this one {hash.Length}.", nameof(hash));
        }
    }
}

/// <summary>The root hash of a full subtree over 2^Level entries.</summary>
public sealed record Subtree(int Level, byte[] Hash);
