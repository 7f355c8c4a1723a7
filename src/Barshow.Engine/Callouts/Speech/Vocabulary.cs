using System.Collections.Frozen;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>The words by which ingredients are known when people speak of them, with how much each of them tells.</summary>
/// <remarks>Common practice, no source: a word that many ingredients share ("juice") tells little, one that parts two of a kind ("dark") tells more.</remarks>
internal static class Vocabulary
{
    // Several words that are one name, and the names people use for one another.
    private static readonly (string[] Said, string[] Meant)[] Phrases = Compile(
        "one to one syrup>simple syrup", "1 1 syrup>simple syrup", "1 to 1 syrup>simple syrup", "sugar syrup>simple syrup", "plain syrup>simple syrup", "gomme syrup>simple syrup", "gum syrup>simple syrup", "stock syrup>simple syrup",
        "two to one syrup>rich syrup", "2 1 syrup>rich syrup", "2 to 1 syrup>rich syrup", "rich simple syrup>rich syrup", "rich simple>rich syrup", "rich sugar syrup>rich syrup",
        "soda water>soda", "club soda>soda", "sparkling water>soda", "seltzer water>soda", "seltzer>soda", "fizzy water>soda", "carbonated water>soda", "mineral water>soda",
        "tonic water>tonic",
        "triple sec>orange liqueur", "curacao>orange liqueur", "dry curacao>orange liqueur", "orange curacao>orange liqueur",
        "egg whites>eggwhite", "egg white>eggwhite", "white of an egg>eggwhite", "white of one egg>eggwhite", "the whites>eggwhite",
        "egg yolk>eggyolk", "egg yolks>eggyolk", "yolk>eggyolk",
        "salt water>saline", "saline solution>saline", "salt solution>saline", "brine>brine",
        "cream of coconut>coconut cream", "coconut milk>coconut milk",
        "italian vermouth>sweet vermouth", "red vermouth>sweet vermouth", "rosso vermouth>sweet vermouth", "french vermouth>dry vermouth", "white vermouth>blanc vermouth", "bianco vermouth>blanc vermouth",
        "ginger beer>gingerbeer", "ginger ale>gingerale", "ginger syrup>ginger syrup", "ginger juice>ginger juice",
        "sparkling wine>bubbles", "champagne>bubbles", "prosecco>bubbles", "cava>bubbles", "cremant>bubbles",
        "coffee liqueur>coffee liqueur", "cold brew>coffee", "espresso>coffee",
        "maple syrup>maple syrup", "powdered sugar>sugar", "sugar cube>sugar", "sugar cubes>sugar", "caster sugar>sugar", "superfine sugar>sugar", "icing sugar>sugar",
        "pineapple juice>pineapple juice", "half and half>cream", "heavy cream>cream", "double cream>cream", "single cream>cream", "whipping cream>cream",
        "hot sauce>hotsauce", "worcestershire sauce>worcestershire", "worcester sauce>worcestershire", "black pepper>pepper",
        "scotch whisky>scotch", "scotch whiskey>scotch", "rye whiskey>rye", "rye whisky>rye", "bourbon whiskey>bourbon", "irish whiskey>irish whiskey",
        "orange blossom water>orangeflower", "orange flower water>orangeflower", "rose water>rosewater", "agave nectar>agave syrup", "london dry gin>dry gin");

    private static readonly FrozenDictionary<string, double> Weights = Table(
        (0.3, "juice water fresh"),
        (0.45, "syrup liqueur cordial sauce puree wine spirit cream milk oil powder aperitif aperitivo amaro"),
        (0.6, "white dark aged gold golden black light silver blanco reposado anejo overproof jamaican sweet dry red blanc green yellow rich simple aromatic spiced navy smoky old new blended pot column strong bitter salted unsalted hot cold brown raw extra london"),
        (0.8, "bitters liqueurs syrups juices sugar salt"),
        (1.0, "rum gin vodka tequila mezcal whiskey bourbon rye scotch brandy cognac calvados pisco cachaca genever aquavit absinthe vermouth sherry port madeira sake soju lime lemon orange grapefruit pineapple cranberry tomato apple pear peach apricot cherry raspberry strawberry blackberry blueberry cassis mango passionfruit passion guava papaya melon watermelon cucumber celery carrot beet banana coconut pomegranate grenadine orgeat almond falernum honey agave maple demerara ginger gingerbeer gingerale cinnamon vanilla nutmeg cardamom clove allspice mint basil thyme rosemary sage coriander lavender elderflower violet rose hibiscus chamomile tea coffee cacao chocolate cocoa hazelnut walnut pistachio maraschino soda tonic cola bubbles champagne beer cider stout ale lager egg eggwhite eggyolk aquafaba butter yogurt saline brine olive onion pickle vinegar shrub worcestershire hotsauce pepper chilli jalapeno fernet amaretto anise pastis limoncello sloe kumquat yuzu fig date plum prune rhubarb lychee kiwi pineapples orangeflower rosewater lemonade oat soy peanut sesame clam"));

    private static readonly FrozenDictionary<string, string> Spellings = Pairs(
        "lemons>lemon limes>lime oranges>orange whisky>whiskey rhum>rum djinn>gin jin>gin jinn>gin gym>gin jim>gin",
        "vermuth>vermouth vermouths>vermouth chili>chilli chile>chilli grapefruits>grapefruit whites>white rums>rum gins>gin",
        "leaves>leaf lyme>lime curacoa>curacao syrups>syrup sirup>syrup serup>syrup liqueurs>liqueur liquor>liqueur licor>liqueur",
        "juices>juice eggs>egg colas>cola sodas>soda cherries>cherry raspberries>raspberry strawberries>strawberry",
        "blackberries>blackberry almonds>almond bitter's>bitters orgeate>orgeat orzhat>orgeat aperitivo>aperitif",
        "aperitifs>aperitif sage's>sage mints>mint yoghurt>yogurt").ToFrozenDictionary(pair => pair.Key, pair => pair.Value);

    // Said of any of a kind: "the whiskey" of a drink made with rye.
    private static readonly FrozenDictionary<string, string[]> Kinds = Pairs(
        "whiskey>bourbon|rye|scotch citrus>lemon|lime|orange|grapefruit|yuzu",
        "spirit>rum|gin|vodka|tequila|mezcal|whiskey|bourbon|rye|scotch|brandy|cognac|pisco brandy>cognac|calvados",
        "sweetener>syrup|honey|agave|maple|sugar wine>vermouth|sherry|port|madeira fizz>soda|bubbles|tonic bitter>bitters",
        "bitters>bitter sugar>simple liqueur>maraschino|amaretto|cassis|elderflower ginger>gingerbeer|gingerale beer>gingerbeer",
        "ale>gingerale salt>saline egg>eggwhite|eggyolk white>eggwhite champagne>bubbles espresso>coffee simple>syrup rum>cachaca",
        "nectar>agave sparkling>bubbles|soda").ToFrozenDictionary(pair => pair.Key, pair => pair.Value.Split('|'));

    private static readonly FrozenSet<string> Empty = new[]
    {
        "fresh", "freshly", "pressed", "squeezed", "chilled", "cold", "good", "best", "homemade", "house", "ripe", "large", "small", "of", "the", "a", "an", "some", "your", "our", "my", "organic", "whole", "strained", "and", "with", "or", "to", "for", "in", "from", "that", "this", "own", "leaf", "sprig", "style",
    }.ToFrozenSet();

    /// <summary>How much a word tells of an ingredient, 0 to 1; 0 for a word that names none.</summary>
    public static double WeightOf(string word) => Weights.GetValueOrDefault(word);

    /// <summary>What a word that is said may stand for besides itself.</summary>
    public static IReadOnlyList<string> KindOf(string word) => Kinds.GetValueOrDefault(word) ?? [];

    /// <summary>The words that an ingredient's name is known by.</summary>
    public static HashSet<string> WordsOf(string name)
    {
        var words = new List<string>();
        foreach (var word in NameFolding.Fold(name).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            words.Add(Spelling(word));
        return [.. Joined(words).Select(word => word.Word).Where(word => !Empty.Contains(word) && !char.IsDigit(word[0]))];
    }

    /// <summary>The usual spelling and number of a word.</summary>
    public static string Spelling(string word)
    {
        if (Spellings.TryGetValue(word, out var spelling))
            return spelling;
        return word.Length > 4 && word[^1] == 's' && Weights.ContainsKey(word[..^1]) && !Weights.ContainsKey(word) ? word[..^1] : word;
    }

    /// <summary>Words with the phrases among them joined; each with how many of the words given it took.</summary>
    public static IEnumerable<(string Word, int From, int Length)> Joined(IReadOnlyList<string> words)
    {
        var i = 0;
        while (i < words.Count)
        {
            var (taken, meant) = PhraseAt(words, i);
            if (taken > 0)
            {
                foreach (var word in meant)
                    yield return (word, i, taken);
                i += taken;
                continue;
            }

            yield return (words[i], i, 1);
            i++;
        }
    }

    private static (int Taken, string[] Meant) PhraseAt(IReadOnlyList<string> words, int at)
    {
        if (!PhrasesByFirst.TryGetValue(words[at], out var phrases))
            return (0, []);
        foreach (var (said, meant) in phrases)
        {
            if (at + said.Length > words.Count)
                continue;
            var k = 1;
            while (k < said.Length && words[at + k] == said[k])
                k++;
            if (k == said.Length)
                return (said.Length, meant);
        }

        return (0, []);
    }

    private static readonly FrozenDictionary<string, (string[] Said, string[] Meant)[]> PhrasesByFirst =
        Phrases.GroupBy(phrase => phrase.Said[0]).ToFrozenDictionary(group => group.Key, group => group.OrderByDescending(phrase => phrase.Said.Length).ToArray());

    private static (string[] Said, string[] Meant)[] Compile(params string[] pairs) =>
        [.. pairs.Select(pair => pair.Split('>')).Select(sides => (sides[0].Split(' '), sides[1].Split(' ')))];

    private static IEnumerable<(string Key, string Value)> Pairs(params string[] rows) =>
        rows.SelectMany(row => row.Split(' ')).Select(pair => pair.Split('>')).Select(sides => (sides[0], sides[1]));

    private static FrozenDictionary<string, double> Table(params (double Weight, string Words)[] rows)
    {
        var table = new Dictionary<string, double>();
        foreach (var (weight, words) in rows)
        {
            foreach (var word in words.Split(' '))
                table.TryAdd(word, weight);
        }

        return table.ToFrozenDictionary();
    }
}
