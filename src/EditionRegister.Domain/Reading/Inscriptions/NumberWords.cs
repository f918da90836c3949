using System.Collections.Frozen;
using System.Globalization;
using EditionRegister.Domain.Reading.Text;

namespace EditionRegister.Domain.Reading.Inscriptions;

/// <summary>Numbers in words, in English, French, Italian, German and Spanish: twelve and twelfth.</summary>
internal static class NumberWords
{
    private static readonly FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Cardinals = Counted(
        "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty",
        "- deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize - - - vingt",
        "- due tre quattro cinque sei sette otto nove dieci undici dodici tredici quattordici quindici sedici diciassette diciotto diciannove venti",
        "- zwei drei vier funf sechs sieben acht neun zehn elf zwolf dreizehn vierzehn funfzehn sechzehn siebzehn achtzehn neunzehn zwanzig",
        "- dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis diecisiete dieciocho diecinueve veinte")
        .With("thirty:30 forty:40 fifty:50 sixty:60 seventy:70 eighty:80 ninety:90 hundred:100 trente:30 quarante:40 cinquante:50 soixante:60 cent:100")
        .With("trenta:30 quaranta:40 cinquanta:50 sessanta:60 settanta:70 ottanta:80 novanta:90 cento:100 treinta:30 cuarenta:40 cincuenta:50 sesenta:60 setenta:70 ochenta:80 noventa:90 cien:100")
        .With("dreissig:30 dreisig:30 vierzig:40 funfzig:50 sechzig:60 siebzig:70 achtzig:80 neunzig:90 hundert:100")
        .With(InOneWord())
        .Frozen();

    private static readonly FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Ordinals = Counted(
        "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth",
        "premier deuxieme troisieme quatrieme cinquieme sixieme septieme huitieme neuvieme dixieme onzieme douzieme",
        "premiere seconde", "primo secondo terzo quarto quinto sesto settimo ottavo nono decimo", "prima seconda terza quarta quinta sesta settima ottava nona decima",
        "primer segundo tercer cuarto quinto sexto septimo octavo noveno decimo", "primero - tercero", "primera segunda tercera cuarta quinta sexta septima octava novena decima",
        "erster zweiter dritter vierter funfter sechster siebter achter neunter zehnter", "erste zweite dritte vierte funfte sechste siebte achte neunte zehnte",
        "ersten zweiten dritten vierten funften sechsten siebten achten neunten zehnten", "erstes zweites drittes viertes funftes sechstes siebtes achtes neuntes zehntes")
        .With("thirtieth:30 fortieth:40 fiftieth:50")
        // Written so for eighth on more than one sheet.
        .With("eight:8")
        .Frozen();

    /// <summary>Every word that a number may begin with.</summary>
    public static IEnumerable<string> All => Cardinals.Dictionary.Keys.Concat(Ordinals.Dictionary.Keys);

    /// <summary>Fifteen, seventy-five, two hundred and fifty, setenta y cinco.</summary>
    public static Numeral? Cardinal(TokenText text, int at)
    {
        if (Below(text, at) is not { } below)
        {
            return null;
        }

        if (below.Value >= 10 || text.Word(below.Next) is not ("hundred" or "hundert"))
        {
            return below;
        }

        var rest = text.IsWord(below.Next + 1, "and") ? Below(text, below.Next + 2) : null;

        return rest is { Value: < 100 } added ? new Numeral(NumeralKind.Word, (below.Value * 100) + added.Value, added.Next) : new Numeral(NumeralKind.Word, below.Value * 100, below.Next + 1);
    }

    /// <summary>One word by itself, whatever it is joined to: the five of five-colour.</summary>
    public static Numeral? Joined(TokenText text, int at) =>
        Cardinals.TryGetValue(text.Word(at), out var value) ? new Numeral(NumeralKind.Word, value, at + 1) : null;

    /// <summary>First, deuxième, zweiter, twenty-ninth.</summary>
    public static Numeral? Ordinal(TokenText text, int at)
    {
        if (Ordinals.TryGetValue(text.Word(at), out var value))
        {
            return new Numeral(NumeralKind.Word, value, at + 1);
        }

        return text.IsSign(at + 1, '-') && Cardinals.TryGetValue(text.Word(at), out var tens) && tens is >= 20 and < 100 && Ordinals.TryGetValue(text.Word(at + 2), out var ones) && ones < 10
            ? new Numeral(NumeralKind.Word, tens + ones, at + 3)
            : null;
    }

    /// <summary>A word, or two that are joined; a word joined to something else (five-colour, quatre-vingts) is no number here.</summary>
    private static Numeral? Below(TokenText text, int at)
    {
        if (!Cardinals.TryGetValue(text.Word(at), out var value))
        {
            return null;
        }

        var joined = text.IsSign(at + 1, '-') && !text.IsApart(at + 1) && !text.IsApart(at + 2) && text.IsWord(at + 2);
        var spoken = text.IsWord(at + 1, "y") || (text.IsWord(at + 1, "et") && text.IsWord(at + 2, "un"));

        if (!joined && !spoken)
        {
            return new Numeral(NumeralKind.Word, value, at + 1);
        }

        var ones = text.IsWord(at + 2, "un") ? 1 : Cardinals.TryGetValue(text.Word(at + 2), out var more) ? more : 0;
        var isOne = value is >= 20 and < 100 && value % 10 == 0 && ones is > 0 and < 20;

        return isOne ? new Numeral(NumeralKind.Word, value + ones, at + 3) : joined ? null : new Numeral(NumeralKind.Word, value, at + 1);
    }

    // A dash keeps the place of a word that another language has already, or that no sheet bears.
    private static Dictionary<string, int> Counted(params string[] languages)
    {
        Dictionary<string, int> words = new(StringComparer.Ordinal);

        foreach (var (place, word) in languages.SelectMany(language => language.Split(' ').Index()).Where(one => one.Item != "-"))
        {
            words.TryAdd(word, place + 1);
        }

        return words;
    }

    private static Dictionary<string, int> With(this Dictionary<string, int> words, string more)
    {
        foreach (var one in more.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = one.IndexOf(':', StringComparison.Ordinal);
            words.TryAdd(one[..colon], int.Parse(one.AsSpan(colon + 1), CultureInfo.InvariantCulture));
        }

        return words;
    }

    /// <summary>Fünfundsiebzig, settantacinque, veinticinco.</summary>
    private static string InOneWord()
    {
        string[] german = ["ein", "zwei", "drei", "vier", "funf", "sechs", "sieben", "acht", "neun"];
        string[] germanTens = ["zwanzig", "dreisig", "vierzig", "funfzig", "sechzig", "siebzig", "achtzig", "neunzig"];
        string[] italian = ["uno", "due", "tre", "quattro", "cinque", "sei", "sette", "otto", "nove"];
        string[] italianTens = ["venti", "trenta", "quaranta", "cinquanta", "sessanta", "settanta", "ottanta", "novanta"];
        string[] spanish = ["uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve"];
        var words = germanTens.Index().SelectMany(ten => german.Index().Select(one => $"{one.Item}und{ten.Item}:{((ten.Index + 2) * 10) + one.Index + 1}"))
            .Concat(italianTens.Index().SelectMany(ten => italian.Index().Select(one => $"{(one.Item is "uno" or "otto" ? ten.Item[..^1] : ten.Item)}{one.Item}:{((ten.Index + 2) * 10) + one.Index + 1}")))
            .Concat(spanish.Index().Select(one => $"veinti{one.Item}:{20 + one.Index + 1}"));

        return string.Join(' ', words);
    }

    private static FrozenDictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> Frozen(this Dictionary<string, int> words) =>
        words.ToFrozenDictionary(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
}
