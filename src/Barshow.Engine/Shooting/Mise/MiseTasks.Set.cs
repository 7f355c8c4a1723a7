using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.Mise;

/// <content>What is set out: glasses, ice, tools, doubles, trays, and what viewers never see.</content>
internal sealed partial class MiseTasks
{
    private void AddGlasses()
    {
        foreach (var group in _episode.Lineup.Where(drink => !drink.Spec.Serve.Glass.IsEmpty).GroupBy(drink => drink.Spec.Serve.Glass))
        {
            _bar.Kit.TryGetGlass(group.Key, out var glass);
            var name = Lower(glass?.Name ?? group.Key.Text);
            var needed = group.Sum(drink => _episode.TakesOf(drink) + DoublesOf(drink));
            var count = glass is { Count: > 0 } ? Math.Min(glass.Count, needed) : needed;
            var drinks = group.Select(drink => drink.Spec.Slug).ToList();
            _tasks.Add(new()
            {
                Key = $"polish:{group.Key}",
                Text = $"Wash and polish {Many(name)}; look for chips and labels.",
                Station = "Glass bench",
                Amount = Count(count, name, Many(name)),
                Quantity = Measure.Of(count, Unit.Piece),
                Duration = Minutes(count * _pace.PolishGlassMinutes),
                NotBefore = TimeSpan.FromDays(-2),
                NotAfter = DayBeforeEnds,
                Session = MiseSession.DayBefore,
                For = drinks,
                Reason = count < needed
                    ? string.Create(CultureInfo.InvariantCulture, $"{needed} are used and there are {count}: the rest come from the wash-ups of the day.")
                    : "A polished glass keeps overnight under a cloth.",
            });
            var chilled = group.Where(drink => drink.Spec.Serve.Chilled).ToList();
            if (chilled.Count == 0)
                continue;
            var cold = Math.Min(count, chilled.Sum(drink => _episode.TakesOf(drink) + DoublesOf(drink)));
            var first = FirstUse(chilled.Select(drink => drink.Spec.Slug));
            _tasks.Add(new()
            {
                Key = $"chill:{group.Key}",
                Text = $"Put {Many(name)} into the freezer.",
                Station = "Freezer",
                Amount = Count(cold, name, Many(name)),
                Quantity = Measure.Of(cold, Unit.Piece),
                Duration = Minutes(2),
                NotBefore = TimeSpan.FromHours(-12),
                NotAfter = Earlier(PrepEnds, first - TimeSpan.FromMinutes(_pace.FrostMinutes)),
                For = [.. chilled.Select(drink => drink.Spec.Slug)],
                After = [$"polish:{group.Key}"],
                Reason = $"Frost that lasts takes {ShootClock.SayDuration(TimeSpan.FromMinutes(_pace.FrostMinutes))}; the first take is at {_order.Clock.Say(first)}.",
            });
        }
    }

    /// <summary>Grams of ice in one served glass. Common practice, no source.</summary>
    private static int GramsInGlass(IceKind ice) => ice switch { IceKind.Cubed => 150, IceKind.Crushed => 180, IceKind.Large => 90, _ => 0 };

    private void AddIce()
    {
        var kinds = new Dictionary<IceKind, (double Grams, List<Slug> Drinks)>();
        foreach (var drink in _episode.Lineup)
        {
            var made = _episode.TakesOf(drink) + DoublesOf(drink);
            Add(drink.Spec.Serve.Ice, made * GramsInGlass(drink.Spec.Serve.Ice));
            if (drink.Spec.Method?.Kind is MethodKind.Shaken or MethodKind.Stirred or MethodKind.Thrown or MethodKind.MuddledAndShaken)
                Add(IceKind.Cubed, made * _pace.MixingIceGrams);
            if (drink.Spec.Method?.Kind is MethodKind.Blended)
                Add(IceKind.Crushed, made * _pace.MixingIceGrams);

            void Add(IceKind kind, double grams)
            {
                if (grams <= 0)
                    return;
                var known = kinds.TryGetValue(kind, out var sum) ? sum : (Grams: 0, Drinks: []);
                if (!known.Drinks.Contains(drink.Spec.Slug))
                    known.Drinks.Add(drink.Spec.Slug);
                kinds[kind] = (known.Grams + grams, known.Drinks);
            }
        }

        foreach (var (kind, (grams, drinks)) in kinds.OrderBy(entry => entry.Key))
        {
            var kilograms = Math.Ceiling(grams * (1 + _pace.IceSpareShare) / 500) / 2;
            var name = kind switch { IceKind.Crushed => "crushed ice", IceKind.Large => "large ice", _ => "ice cubes" };
            _tasks.Add(new()
            {
                Key = $"ice:{kind.ToString().ToLowerInvariant()}",
                Text = kind is IceKind.Large ? "Temper large ice until its frost clears." : $"Fetch {name} and drain the old melt.",
                Station = "Ice",
                Amount = string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.#} kg"),
                Quantity = Measure.Of(new Rational((long)(kilograms * 1000)), Unit.Gram),
                Duration = Minutes(kind is IceKind.Large ? 3 : 8),
                NotBefore = TimeSpan.FromMinutes(-90),
                NotAfter = PrepEnds,
                Perishes = 5,
                For = drinks,
                Reason = string.Create(CultureInfo.InvariantCulture, $"Half as much again as the takes need, fetched late so that it is dry{(kind is IceKind.Crushed ? "; crush it at the shot" : "")}."),
            });
        }
    }

    private void AddStations()
    {
        foreach (var group in _episode.Lineup.GroupBy(drink => drink.Station.Length > 0 ? drink.Station : Stations.Of(drink.Spec.Method?.Kind)))
        {
            var tools = group.SelectMany(drink => ToolsOf(drink.Spec)).Distinct().ToList();
            foreach (var drink in group)
                foreach (var tool in ToolsOf(drink.Spec).Where(tool => !Owned(tool)))
                    if (_bar.Kit.Tools.Count > 0)
                        _findings.Add(MiseSentences.ToolMissing(drink.Name, tool));
            _tasks.Add(new()
            {
                Key = $"station:{Slug.Of(group.Key)}",
                Text = $"Lay out the {group.Key} station: {string.Join(", ", tools.Append("jigger").Append("bar towel"))}.",
                Station = "Bench",
                Duration = Minutes(3 + tools.Count / 2.0),
                NotBefore = TimeSpan.FromHours(-12),
                NotAfter = PrepEnds,
                For = [.. group.Select(drink => drink.Spec.Slug)],
                Reason = "Tools lie ready before hands are wet.",
            });
        }

        if (_bar.Kit.Tools.Count == 0)
            _findings.Add(MiseSentences.ToolsNotCounted());
    }

    private bool Owned(string tool)
    {
        var word = NameFolding.Fold(tool);
        return _bar.Kit.Tools.Any(owned => NameFolding.Fold(owned.Name).Contains(word, StringComparison.Ordinal)
            || (word is "shaker" && NameFolding.Fold(owned.Name).Contains("tin", StringComparison.Ordinal))
            || (word is "strainer" && NameFolding.Fold(owned.Name).Contains("strainer", StringComparison.Ordinal))
            || (word is "fine sieve" && NameFolding.Fold(owned.Name) is "sieve" or "fine strainer" or "tea strainer" or "fine mesh strainer")
            || (word is "barspoon" && NameFolding.Fold(owned.Name) is "bar spoon"));
    }

    private static IEnumerable<string> ToolsOf(Spec spec)
    {
        var kind = spec.Method?.Kind;
        if (kind is MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken)
            yield return "muddler";
        if (kind is MethodKind.Shaken or MethodKind.MuddledAndShaken or MethodKind.Thrown)
            yield return "shaker";
        if (kind is MethodKind.Stirred)
            yield return "mixing glass";
        if (kind is MethodKind.Stirred or MethodKind.Built or MethodKind.Layered)
            yield return "barspoon";
        if (kind is MethodKind.Swizzled)
            yield return "swizzle stick";
        if (kind is MethodKind.Blended)
            yield return "blender";
        if (spec.Serve.Strain is Straining.Single or Straining.Fine || kind is MethodKind.Thrown)
            yield return "strainer";
        if (spec.Serve.Strain is Straining.Fine)
            yield return "fine sieve";
    }

    /// <summary>How long a double looks right once it is put together, in minutes. Common practice, no source.</summary>
    private static int LooksRightMinutes(LineupDrink drink, Bar bar) => drink.Spec switch
    {
        { Serve.Ice: IceKind.Crushed } => 5,
        { Method.Kind: MethodKind.Layered } => 15,
        { Method.Kind: MethodKind.Blended } => 10,
        { Method.Kind: MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken } => 20,
        { Method.Kind: MethodKind.Stirred } => 6,
        { } spec when spec.Lines.Any(line => bar.Ingredients[line.Ingredient] is { Fizzy: true } or { Kind: IngredientKind.Egg }) => 4,
        _ => 10,
    };

    private void AddDoubles()
    {
        foreach (var drink in _episode.Lineup.Where(drink => DoublesOf(drink) > 0))
        {
            var doubles = DoublesOf(drink);
            var untasted = drink.UntastedSwapOuts == 0 ? ""
                : string.Create(CultureInfo.InvariantCulture, $" Nobody tastes {(drink.UntastedSwapOuts == doubles ? doubles == 1 ? "it" : "them" : drink.UntastedSwapOuts + " of them")}: water or cold tea in place of spirit, the glass marked and kept from tasters.");
            _tasks.Add(new()
            {
                Key = $"double:{drink.Spec.Slug}",
                Text = $"Measure the parts of {Count(doubles, "double", "doubles")} of {drink.Name} into beakers.{untasted}",
                Station = "Trays",
                Amount = Count(doubles, "double", "doubles"),
                Quantity = Measure.Of(doubles, Unit.Piece),
                Duration = Minutes(2 * doubles),
                NotBefore = TimeSpan.FromHours(-6),
                NotAfter = PrepEnds,
                Perishes = 1,
                For = [drink.Spec.Slug],
                After = [.. drink.Spec.Lines.Where(line => !IsShortLived(line.Ingredient)).SelectMany(line => new[] { $"juice:{line.Ingredient}", $"prep:{line.Ingredient}" })],
                Reason = string.Create(CultureInfo.InvariantCulture, $"Put together it looks right for about {LooksRightMinutes(drink, _bar)} min, so the parts wait apart until the close-ups."),
            });
        }
    }

    // What is made at the last minute goes into a beaker at the shot, or nothing else could be made after it.
    private bool IsShortLived(Slug ingredient) => _bar.Ingredients[ingredient]?.Fresh is { } fresh && fresh.Best < TimeSpan.FromHours(4);

    private void AddTrays()
    {
        foreach (var drink in _episode.Lineup)
        {
            var things = drink.Spec.Lines.Select(line => Lower(line.Name)).Distinct().ToList();
            if (drink.Spec.Garnish is { } garnish)
                things.Add(Lower(garnish.Text));
            if (drink.Spec.Serve.Straw)
                things.Add(Count(MakesOf(drink) + drink.UntastedSwapOuts, "straw", "straws"));
            _tasks.Add(new()
            {
                Key = $"tray:{drink.Spec.Slug}",
                Text = $"Lay and label the tray of {drink.Name}: {string.Join(", ", things)}.",
                Station = "Trays",
                Duration = Minutes(_pace.TrayMinutes),
                NotBefore = TimeSpan.FromHours(-6),
                NotAfter = PrepEnds,
                For = [drink.Spec.Slug],
                Reason = "Chilled and late-made things join the tray in the reset before its first take.",
            });
        }
    }

    private void AddBottle()
    {
        if (_episode.Bottle is not { } bottle)
            return;
        _tasks.Add(new()
        {
            Key = "bottle",
            Text = $"Set the {Lower(bottle.Name)}: label square to the camera, level noted, a spare with the same label near.",
            Station = "Bench",
            Amount = bottle.Millilitres is { } size ? string.Create(CultureInfo.InvariantCulture, $"{size:0} ml bottle") : "",
            Duration = Minutes(3),
            NotBefore = TimeSpan.FromHours(-12),
            NotAfter = PrepEnds,
            Reason = "The level must match from shot to shot.",
        });
    }

    private void AddUnseen()
    {
        AddPlain("unseen", "Set out towels, bin, spit cup, water and plain bread for the presenter.", "Bench", 4, 0, "Tasting on set is sips: spit, eat and drink water.");
        var hazards = _episode.Lineup.SelectMany(drink => drink.Spec.Hazards.Concat(drink.Spec.Lines.SelectMany(line => _bar.Ingredients[line.Ingredient]?.Hazards ?? []))).ToHashSet();
        if (hazards.Contains(Hazard.Flame) || hazards.Contains(Hazard.OverproofSpirit))
            AddPlain("fire", "Lay a damp cloth, a lid and the extinguisher within reach; move paper and open bottles away.", "Bench", 3, 0, "A strong spirit lights without warming. Follow local fire rules; who lights has not been drinking.");
        if (hazards.Contains(Hazard.DryIce))
            AddPlain("dry-ice", "Lay out insulated gloves and tongs; open a window.", "Bench", 3, 0, "Dry ice burns and its gas displaces air: none in a glass that is drunk, never a closed vessel.");
        var allergens = _episode.Lineup.SelectMany(drink => drink.Spec.Lines).SelectMany(line => _bar.Ingredients[line.Ingredient]?.Allergens ?? []).Where(entry => entry.Presence is AllergenPresence.Contains).Select(entry => entry.Allergen).Distinct().Order().ToList();
        if (allergens.Count > 0)
            AddPlain("allergens", $"Put up the allergen card: {string.Join(", ", allergens.Select(allergen => allergen.ToString().ToLowerInvariant()))}.", "Bench", 2, 0, "Who tastes must know; shared tools are washed between drinks.");
        _tasks.Add(new()
        {
            Key = "clean",
            Text = "Wipe the bench, empty the bin, wash hands, fresh towel.",
            Station = "Bench",
            Duration = TimeSpan.FromMinutes(Math.Max(1, _pace.HandsCleanMinutes)),
            NotBefore = PrepEnds,
            NotAfter = TimeSpan.Zero,
            Reason = "Preparation ends, hands clean, before the first word.",
        });
    }

    private void AddPlain(string key, string text, string station, int minutes, int perishes, string reason) => _tasks.Add(new()
    {
        Key = key,
        Text = text,
        Station = station,
        Duration = Minutes(minutes),
        NotBefore = TimeSpan.FromHours(-12),
        NotAfter = PrepEnds,
        Perishes = perishes,
        Reason = reason,
    });
}
