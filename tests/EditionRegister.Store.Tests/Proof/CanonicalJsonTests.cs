using System.Globalization;
using System.Text;
using EditionRegister.Store.Proof;

namespace EditionRegister.Store.Tests.Proof;

public sealed class CanonicalJsonTests
{
    // Source: github.com/cyberphone/json-canonicalization, the author's test data beside RFC 8785:
    // testdata/input and testdata/output, the pairs arrays, values (RFC 8785 section 3.2.2 and 3.2.3), structures, french, unicode.
    [Theory]
    [InlineData("""[56, {"d": true, "10": null, "1": [ ]}]""", """[56,{"1":[],"10":null,"d":true}]""")]
    [InlineData(
        """
        {
          "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
          "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
          "literals": [null, true, false]
        }
        """,
        """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""")]
    [InlineData(
        """
        {
          "1": {"f": {"f": "hi","F": 5} ,"\n": 56.0},
          "10": { },
          "": "empty",
          "a": { },
          "111": [ {"e": "yes","E": "no" } ],
          "A": { }
        }
        """,
        """{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}""")]
    [InlineData(
        """
        {
          "peach": "This sorting order",
          "péché": "is wrong according to French",
          "pêche": "but canonicalization MUST",
          "sin":   "ignore locale"
        }
        """,
        """{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"}""")]
    [InlineData("""{"Unnormalized Unicode":"A\u030a"}""", "{\"Unnormalized Unicode\":\"A\u030a\"}")]
    public void Brings_the_published_documents_into_their_published_form(string document, string canonical)
    {
        var bytes = CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes(document));

        Assert.Equal(canonical, Encoding.UTF8.GetString(bytes));
    }

    // Source: the same test data, the pair weird (RFC 8785 section 3.2.3): a character beyond U+FFFF sorts by its first
    // surrogate, before U+FB33; neither U+007F nor U+0080 is escaped.
    [Fact]
    public void Sorts_names_by_their_UTF_16_code_units()
    {
        const string document =
            """
            {
              "\u20ac": "Euro Sign",
              "1": "One",
              "\u0080": "Control\u007f",
              "\ud83d\ude02": "Smiley",
              "\u00f6": "Latin Small Letter O With Diaeresis",
              "\ufb33": "Hebrew Letter Dalet With Dagesh",
              "</script>": "Browser Challenge"
            }
            """;

        var bytes = CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes(document));

        Assert.Equal(
            "{\"1\":\"One\",\"</script>\":\"Browser Challenge\",\"\u0080\":\"Control\u007f\",\"\u00f6\":\"Latin Small Letter O With Diaeresis\","
            + "\"\u20ac\":\"Euro Sign\",\"\ud83d\ude02\":\"Smiley\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}",
            Encoding.UTF8.GetString(bytes));
    }

    // Source: RFC 8785 Appendix B, all finite samples, and the sample lines of testdata/README.md of
    // github.com/cyberphone/json-canonicalization.
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4340000000000001", "9007199254740994")]
    [InlineData("4340000000000002", "9007199254740996")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    // Not published: what an ECMAScript engine (V8, in Node.js) writes for the powers of two 2^-25, its negative and 2^-44,
    // where the nearest 16 digits lie outside the narrower gap below a power of two.
    [InlineData("3e60000000000000", "2.9802322387695312e-8")]
    [InlineData("be60000000000000", "-2.9802322387695312e-8")]
    [InlineData("3d30000000000000", "5.684341886080802e-14")]
    public void Writes_numbers_as_ECMAScript_does(string ieee754, string canonical)
    {
        var number = BitConverter.UInt64BitsToDouble(ulong.Parse(ieee754, NumberStyles.HexNumber, CultureInfo.InvariantCulture));

        var bytes = CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes(number.ToString("E20", CultureInfo.InvariantCulture)));

        Assert.Equal(canonical, Encoding.UTF8.GetString(bytes));
    }

    // RFC 8785 sections 3.1 (I-JSON: names once, no lone surrogates) and 3.2.2.3 (NaN and Infinity are errors); RFC 8259 for the rest.
    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("[1")]
    [InlineData("[1,]")]
    [InlineData("[1] 2")]
    [InlineData("{\"title\":1,\"title\":2}")]
    [InlineData("{\"title\":1,\"\\u0074itle\":2}")]
    [InlineData("\"\\ud83d\"")]
    [InlineData("\"\\ude02\\ud83d\"")]
    [InlineData("{\"\\ud83d\":1}")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e400")]
    [InlineData("-1e400")]
    [InlineData("01")]
    [InlineData("[1] // note")]
    [InlineData("\"a\nb\"")]
    public void Refuses_what_has_no_canonical_form(string document)
    {
        var bytes = Encoding.UTF8.GetBytes(document);

        Assert.Throws<FormatException>(() => CanonicalJson.Canonicalise(bytes));
    }

    [Theory]
    [InlineData(new byte[] { 0x22, 0xED, 0xA0, 0xBD, 0x22 })]        // a surrogate written as three bytes
    [InlineData(new byte[] { 0x22, 0xC3, 0x22 })]                    // half of a two-byte character
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0x31 })]              // a byte order mark (RFC 8259 section 8.1)
    public void Refuses_bytes_that_are_not_plain_UTF_8(byte[] document)
    {
        Assert.Throws<FormatException>(() => CanonicalJson.Canonicalise(document));
    }

    [Fact]
    public void Refuses_to_go_deeper_than_it_says()
    {
        var deepest = new string('[', CanonicalJson.Deepest) + new string(']', CanonicalJson.Deepest);

        var bytes = CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes(deepest));

        Assert.Equal(deepest, Encoding.UTF8.GetString(bytes));
        Assert.Throws<FormatException>(() => CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes($"[{deepest}]")));
    }

    // RFC 8785 section 3.2.2.2: short escapes where JSON has them, \u00xx in lower case for the other control characters.
    [Fact]
    public void Escapes_control_characters_the_short_way_where_there_is_one()
    {
        const string document = """ "\u0000\u0008\u0009\u000A\u000B\u000C\u000D\u001F\u0020\u002f" """;

        var bytes = CanonicalJson.Canonicalise(Encoding.UTF8.GetBytes(document));

        Assert.Equal("\"" + @"\u0000\b\t\n\u000b\f\r\u001f /" + "\"", Encoding.UTF8.GetString(bytes));
    }
}
