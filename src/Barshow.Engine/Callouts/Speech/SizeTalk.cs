using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>Tells amounts that are poured from the sizes of glasses, bottles and jiggers, and from words that only look like amounts.</summary>
internal static class SizeTalk
{
    private static readonly HashSet<string> Vessels =
    [
        "bottle", "bottles", "glass", "glasses", "coupe", "coupes", "can", "cans", "tin", "tins", "shaker", "jigger", "jiggers", "highball", "flute", "tumbler", "jar", "jars", "mug", "mugs", "pitcher", "decanter",
        "goblet", "carafe", "side", "end", "size", "sized", "mark", "line", "capacity", "format", "cap", "measuring", "cup", "vessel", "carton", "container", "dropper", "batch",
    ];

    private static readonly HashSet<string> GlassKinds = ["rocks", "highball", "collins", "cocktail", "martini", "wine", "shot", "pint", "mixing", "tall", "old", "nick", "plastic", "glass", "squeeze", "swing", "measuring", "double", "julep", "hurricane", "coupe", "beer"];

    // A unit that is also an everyday thing: with an article it is an amount only when something follows that it is an amount of.
    private static readonly HashSet<Unit> Everyday =
        [Unit.Jigger, Unit.Pony, Unit.Nip, Unit.Wineglass, Unit.Finger, Unit.Glug, Unit.Spoon, Unit.Shot, Unit.Cup, Unit.Pint, Unit.Quart, Unit.Gallon, Unit.Gill, Unit.Drop, Unit.Squeeze, Unit.Crack, Unit.Spray, Unit.Pinch, Unit.Dash, Unit.Splash, Unit.Handful, Unit.Bunch, Unit.Litre];

    private static readonly HashSet<Unit> Containers = [Unit.Can, Unit.Bottle, Unit.Jar, Unit.Carton, Unit.Bag];

    // What is cut from a fruit or picked as a garnish.
    private static readonly HashSet<Unit> Cuts =
        [Unit.Wedge, Unit.Wheel, Unit.Slice, Unit.Twist, Unit.Piece, Unit.Chunk, Unit.Strip, Unit.Coin, Unit.Ring, Unit.Ribbon, Unit.Cube, Unit.Stalk, Unit.Stick, Unit.Knob, Unit.Pod, Unit.Frond, Unit.Scoop];

    private static readonly HashSet<Unit> Picked = [Unit.Leaf, Unit.Sprig, Unit.Handful, Unit.Bunch];

    private static readonly HashSet<string> NeverMeasured = ["patience", "prevention", "luck", "sense", "effort", "history", "truth", "courage", "love", "care", "doubt", "respect", "fun", "magic"];

    private static readonly Phrase Holding = new("holds|hold|fits|takes|capacity|sized", "bottle|bottles of", "bottle|bottles is", "glass of", "glass is", "glass that is", "jigger is", "jigger of", "side is|of", "end is|of", "the big|small|large|little side|end is", "that holds|fits");

    /// <summary>Whether a measure with a unit is an amount that goes into a drink.</summary>
    public static bool IsPoured(SpeechText speech, SpokenAmount amount, Measure measure, Func<Unit, bool> isInSpecs)
    {
        var unit = measure.Unit!;
        var tokens = speech.Tokens;
        var first = tokens[amount.From].Word;
        var isArticle = first is "a" or "an" && measure.Low == Rational.One;
        var after = amount.To < tokens.Count && tokens[amount.To - 1].Pause != Pause.Sentence ? tokens[amount.To].Word : "";
        var before = amount.From > 0 ? tokens[amount.From - 1].Word : "";
        if (unit.Kind == UnitKind.Part || (unit == Unit.Pound && after != "of") || unit == Unit.Milligram)
            return isInSpecs(unit);
        if ((Containers.Contains(unit) || Cuts.Contains(unit)) && !isInSpecs(unit))
            return false;
        if (Picked.Contains(unit) && measure.High <= Rational.One && !isInSpecs(unit))
            return false;
        if (Everyday.Contains(unit) && isArticle && after != "of")
            return false;
        if (unit == Unit.Pinch && before is "in" or "at")
            return false;
        if (after == "of" && amount.To + 1 < tokens.Count && NeverMeasured.Contains(tokens[amount.To + 1].Word))
            return false;
        return unit.Kind != UnitKind.Volume || !IsSize(speech, amount, measure);
    }

    private static bool IsSize(SpeechText speech, SpokenAmount amount, Measure measure)
    {
        var tokens = speech.Tokens;
        if (amount.To < tokens.Count && tokens[amount.To - 1].Pause == Pause.None)
        {
            var next = tokens[amount.To].Word;
            if (Vessels.Contains(next))
                return true;
            if (GlassKinds.Contains(next) && tokens[amount.To].Pause == Pause.None && amount.To + 1 < tokens.Count && Vessels.Contains(tokens[amount.To + 1].Word))
                return true;
        }

        var from = Math.Max(speech.SentenceStart(amount.From), amount.From - 4);
        if (Holding.LastIn(speech, from, amount.From) is { } holding && amount.From - holding.To <= 1)
            return true;
        if (measure.InMillilitres(Convention.Bar) is { } millilitres && millilitres >= 330)
        {
            var near = Math.Min(speech.SentenceEnd(amount.From), amount.To + 5);
            for (var i = Math.Max(speech.SentenceStart(amount.From), amount.From - 6); i < near; i++)
            {
                if (tokens[i].Word is "bottle" or "bottles" or "bottle's" or "can" or "carton")
                    return true;
            }
        }

        return false;
    }
}
