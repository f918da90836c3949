using System.Text;
using CsCheck;
using EditionRegister.Store.Proof;

namespace EditionRegister.Store.Tests.Proof;

public sealed class MerkleTreeTests
{
    // Source: github.com/transparency-dev/merkle, testonly/constants.go (the reference tree of RFC 6962 and RFC 9162).
    private static readonly string[] Leaves =
        ["", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f"];

    // Source: github.com/transparency-dev/merkle, testonly/constants.go: the roots over the first 0 to 8 of those leaves.
    [Theory]
    [InlineData(0, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    [InlineData(1, "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d")]
    [InlineData(2, "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125")]
    [InlineData(3, "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77")]
    [InlineData(4, "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7")]
    [InlineData(5, "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4")]
    [InlineData(6, "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef")]
    [InlineData(7, "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c")]
    [InlineData(8, "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328")]
    public void Grows_to_the_published_roots(int size, string root)
    {
        Frontier frontier = new();

        foreach (var leaf in Leaves.Take(size))
        {
            frontier.Append(MerkleTree.LeafHash(Convert.FromHexString(leaf)));
        }

        Assert.Equal(root, Convert.ToHexStringLower(frontier.Root()));
        Assert.Equal(size, frontier.Size);
    }

    // Source: github.com/transparency-dev/merkle, rfc6962/rfc6962_test.go.
    [Fact]
    public void Hashes_a_leaf_as_published()
    {
        var hash = MerkleTree.LeafHash("L123456"u8);

        Assert.Equal("395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56", Convert.ToHexStringLower(hash));
    }

    // Source: github.com/transparency-dev/merkle, rfc6962/rfc6962_test.go.
    [Fact]
    public void Hashes_a_node_as_published()
    {
        var hash = MerkleTree.NodeHash("N123"u8, "N456"u8);

        Assert.Equal("aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb", Convert.ToHexStringLower(hash));
    }

    // The second opinion is the recursive definition of RFC 6962 section 2.1, written down as it stands there.
    [Fact]
    public void Grows_to_the_root_that_the_definition_gives()
    {
        Gen.Byte.Array[0, 20].List[0, 70].Sample(entries =>
        {
            Frontier frontier = new();

            entries.ForEach(entry => frontier.Append(MerkleTree.LeafHash(entry)));

            Assert.Equal(RootByDefinition(entries), frontier.Root());
        });
    }

    [Fact]
    public void Goes_on_from_where_it_was_saved()
    {
        Gen.Select(Gen.Int[0, 70], Gen.Int[0, 70]).Sample((before, after) =>
        {
            var whole = Grown(before);

            var loaded = Frontier.Load([.. whole.Subtrees]);
            Grow(whole, before, after);
            Grow(loaded, before, after);

            Assert.Equal(before + after, loaded.Size);
            Assert.Equal(whole.Root(), loaded.Root());
        });
    }

    [Fact]
    public void Keeps_the_full_subtrees_largest_first()
    {
        var frontier = Grown(11);

        Assert.Equal([3, 1, 0], frontier.Subtrees.Select(subtree => subtree.Level));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 2)]
    [InlineData(3, -1)]
    [InlineData(62, 0)]
    public void Refuses_a_saved_frontier_that_no_tree_has(int first, int second)
    {
        Subtree[] saved = [new(first, new byte[32]), new(second, new byte[32])];

        Assert.Throws<ArgumentException>(() => Frontier.Load(saved));
    }

    [Fact]
    public void Refuses_a_hash_of_another_length()
    {
        Frontier frontier = new();

        Assert.Throws<ArgumentException>(() => frontier.Append(new byte[31]));
        Assert.Throws<ArgumentException>(() => Frontier.Load([new Subtree(0, new byte[33])]));
    }

    private static Frontier Grown(int size)
    {
        Frontier frontier = new();
        Grow(frontier, 0, size);

        return frontier;
    }

    private static void Grow(Frontier frontier, int from, int count)
    {
        for (var i = from; i < from + count; i++)
        {
            frontier.Append(MerkleTree.LeafHash(Encoding.UTF8.GetBytes($"entry {i}")));
        }
    }

    private static byte[] RootByDefinition(List<byte[]> entries)
    {
        if (entries.Count == 0)
        {
            return MerkleTree.EmptyRoot();
        }

        if (entries.Count == 1)
        {
            return MerkleTree.LeafHash(entries[0]);
        }

        var k = 1;

        while (k * 2 < entries.Count)
        {
            k *= 2;
        }

        return MerkleTree.NodeHash(RootByDefinition(entries[..k]), RootByDefinition(entries[k..]));
    }
}
