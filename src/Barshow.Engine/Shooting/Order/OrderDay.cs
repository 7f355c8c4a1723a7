using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.Order;

/// <summary>One drink to be filmed, with all its takes in one go; minutes are whole.</summary>
internal sealed class DrinkJob
{
    public required LineupDrink Drink { get; init; }

    public Slug Slug => Drink.Spec.Slug;

    public string Name => Drink.Name;

    /// <summary>Its place in viewer order, from 0.</summary>
    public required int Place { get; init; }

    /// <summary>What is done, in order, each with its minutes.</summary>
    public required IReadOnlyList<(BlockKind Kind, int Minutes, int Take)> Parts { get; init; }

    public int Minutes => Parts.Sum(part => part.Minutes);

    public required SetUp SetUp { get; init; }

    public required DrinkTraits Traits { get; init; }

    /// <summary>Preps and juices in it whose window could close during the day.</summary>
    public required IReadOnlyList<FreshPrep> Uses { get; init; }

    /// <summary>The kind of glass it may run out of; null when there are enough or none is named.</summary>
    public GlassStock? Glass { get; init; }

    /// <summary>Clean glasses it needs at its start.</summary>
    public int Glasses { get; init; }

    /// <summary>Allergens that stay on the shared tools after it.</summary>
    public required IReadOnlySet<Allergen> OnTools { get; init; }

    /// <summary>Whether it uses shakers, strainers and the like at all.</summary>
    public bool SharesTools { get; init; }

    public override string ToString() => Name;
}

/// <summary>A kind of glass of which the lineup needs more than there are.</summary>
internal sealed record GlassStock(Slug Glass, string Name, int Count, int Needed);

/// <summary>A prep or juice that may lose its looks during the day.</summary>
internal sealed class FreshPrep
{
    public required Ingredient Ingredient { get; init; }

    public Slug Slug => Ingredient.Slug;

    public string Name => Ingredient.Name;

    /// <summary>When the first batch is finished, in minutes from the call.</summary>
    public required int Made { get; init; }

    public required int RestMinutes { get; init; }

    public required int BestMinutes { get; init; }

    /// <summary>What a further batch takes from the presenter's day.</summary>
    public required int BatchMinutes { get; init; }

    /// <summary>Whether the further batch is made by another pair of hands, beside the filming.</summary>
    public required bool Beside { get; init; }

    /// <summary>How long hands are busy with a batch, whosever they are.</summary>
    public required int HandsOnMinutes { get; init; }

    public required bool MayRepeat { get; init; }
}

/// <summary>The facts of a shoot day in the job's words, before anything is decided.</summary>
internal sealed class OrderDay
{
    private OrderDay(Episode episode, Bar bar, OrderSettings settings)
    {
        Episode = episode;
        Settings = settings;
        Hands = Math.Max(1, bar.House.Hands);
        var filmed = settings.SoFar?.Filmed.Select(film => film.Drink).ToHashSet() ?? [];
        var lineup = episode.Lineup.DistinctBy(drink => drink.Spec.Slug).ToList();
        Opening = settings.SoFar is null ? OpeningOf(episode, settings.Pace) : [];
        Start = settings.SoFar is { } soFar ? Whole(soFar.Now) : 0;
        var talk = Opening.Sum(part => part.Minutes) + settings.Pace.OutroMinutes + lineup.Count * settings.Pace.ComparisonMinutes;
        var parts = lineup.ToDictionary(drink => drink, drink => PartsOf(drink, episode, bar, settings));
        Horizon = Start + talk + parts.Values.Sum(list => list.Sum(part => part.Minutes))
            + lineup.Count * (settings.Pace.ResetMinutes + settings.Pace.StationChangeMinutes + settings.Pace.BackdropChangeMinutes + settings.Pace.MethodChangeMinutes
                + settings.Pace.GlassChangeMinutes + settings.Pace.AllergenWashMinutes + settings.Pace.WashUpMinutes + settings.Pace.BreakMinutes + settings.Pace.RechillMinutes)
            + settings.Pace.MealMinutes + 240;
        var stocks = StocksOf(lineup.Where(drink => !filmed.Contains(drink.Spec.Slug)), episode, bar);
        var preps = new Dictionary<Slug, FreshPrep>();
        Jobs = [.. lineup.Select((drink, place) => JobOf(drink, place, parts[drink], stocks, preps, bar)).Where(job => !filmed.Contains(job.Slug))];
        Preps = [.. preps.Values.OrderBy(prep => prep.Slug)];
        Filmed = [.. settings.SoFar?.Filmed.Select(film => (film, lineup.FirstOrDefault(drink => drink.Spec.Slug == film.Drink))) ?? []];
        LastFilmed = Filmed.Count > 0 && Filmed[^1].Drink is { } last ? JobOf(last, lineup.IndexOf(last), parts[last], stocks, [], bar) : null;
    }

    public Episode Episode { get; }

    public OrderSettings Settings { get; }

    public ShootingPace Pace => Settings.Pace;

    public int Hands { get; }

    /// <summary>Drinks still to film, in viewer order.</summary>
    public IReadOnlyList<DrinkJob> Jobs { get; }

    public IReadOnlyList<FreshPrep> Preps { get; }

    /// <summary>What is filmed already, with its drink where the lineup still holds it.</summary>
    public IReadOnlyList<(FilmedDrink Film, LineupDrink? Drink)> Filmed { get; }

    /// <summary>The last drink that was filmed, whose set-up stands; null before the first.</summary>
    public DrinkJob? LastFilmed { get; }

    /// <summary>When planning begins, in minutes from the call.</summary>
    public int Start { get; }

    /// <summary>Later than any sensible wrap, in minutes from the call.</summary>
    public int Horizon { get; }

    /// <summary>Drinks still to film that are to stand side by side.</summary>
    public IEnumerable<(DrinkJob One, DrinkJob Other)> Pairs =>
        from one in Jobs
        from other in Jobs
        where one.Drink.BesideDrink == other.Slug && one != other && (other.Drink.BesideDrink != one.Slug || one.Place < other.Place)
        select (one, other);

    /// <summary>What the comparison adds to the second drink of a pair when it directly follows the first.</summary>
    public int ComparisonMinutes(DrinkJob? from, DrinkJob to) =>
        from is not null && (to.Drink.BesideDrink == from.Slug || from.Drink.BesideDrink == to.Slug) ? Pace.ComparisonMinutes : 0;

    /// <summary>Talk before the first drink.</summary>
    public IReadOnlyList<(BlockKind Kind, int Minutes)> Opening { get; }

    public IEnumerable<GlassStock> Stocks => Jobs.Select(job => job.Glass).OfType<GlassStock>().Distinct();

    public static OrderDay Of(Episode episode, Bar bar, OrderSettings settings) => new(episode, bar, settings);

    /// <summary>The minutes between the end of one drink and the start of the next that changes of set-up take; <paramref name="from"/> is null before the first.</summary>
    public int ChangeMinutes(DrinkJob? from, DrinkJob to)
    {
        if (from is null)
            return 0;
        var pace = Pace;
        var minutes = pace.ResetMinutes;
        if (from.SetUp.Station != to.SetUp.Station)
            minutes += pace.StationChangeMinutes;
        if (to.SetUp.Backdrop != from.SetUp.Backdrop)
            minutes += pace.BackdropChangeMinutes;
        if (from.SetUp.Method != to.SetUp.Method)
            minutes += pace.MethodChangeMinutes;
        if (from.SetUp.Glass != to.SetUp.Glass)
            minutes += pace.GlassChangeMinutes;
        if (to.SharesTools && from.OnTools.Any(allergen => !to.OnTools.Contains(allergen)))
            minutes += pace.AllergenWashMinutes;
        return minutes;
    }

    /// <summary>What changes between two drinks, in words.</summary>
    public static IReadOnlyList<string> Changes(DrinkJob? from, DrinkJob to)
    {
        if (from is null)
            return [];
        List<string> changes = [];
        if (from.SetUp.Station != to.SetUp.Station)
            changes.Add($"station from {from.SetUp.Station} to {to.SetUp.Station}");
        if (to.SetUp.Backdrop != from.SetUp.Backdrop)
            changes.Add("backdrop");
        if (from.SetUp.Method != to.SetUp.Method)
            changes.Add("method");
        if (from.SetUp.Glass != to.SetUp.Glass)
            changes.Add("glass");
        if (to.SharesTools && from.OnTools.Any(allergen => !to.OnTools.Contains(allergen)))
            changes.Add("tools washed of " + string.Join(" and ", from.OnTools.Where(allergen => !to.OnTools.Contains(allergen)).Order().Select(allergen => allergen.ToString().ToLowerInvariant())));
        return changes;
    }

    /// <summary>How much harder the second tastes badly after the first: a point for each percent of strength and each gram of sugar to 100 ml that it falls, 30 after salt, chilli or smoke.</summary>
    public static int PalatePoints(DrinkJob? from, DrinkJob to) =>
        from is null ? 0
            : Math.Max(0, from.Traits.StrengthPercent - to.Traits.StrengthPercent)
            + Math.Max(0, from.Traits.SugarPer100 - to.Traits.SugarPer100)
            + (from.Traits.Lingers && !to.Traits.Lingers ? 30 : 0);

    /// <summary>Work that no order saves: drinks, talk, and one reset between neighbours.</summary>
    public int LeastMinutes => Opening.Sum(part => part.Minutes) + Pace.OutroMinutes + Jobs.Sum(job => job.Minutes)
        + Math.Max(0, Jobs.Count - (LastFilmed is null ? 1 : 0)) * Pace.ResetMinutes;

    /// <summary>Whether a meal belongs to what is still to come.</summary>
    public bool NeedsMeal => Start + LeastMinutes > Pace.MealByMinutes && Settings.SoFar is not { MealOver: true } && Start < Pace.MealByMinutes;

    private static int Whole(TimeSpan time) => (int)Math.Ceiling(time.TotalMinutes);

    private static List<(BlockKind, int)> OpeningOf(Episode episode, ShootingPace pace)
    {
        List<(BlockKind, int)> opening = [(BlockKind.Intro, pace.IntroMinutes)];
        if (episode.Sponsor.IsSponsored)
            opening.Add((BlockKind.SponsorRead, pace.SponsorReadMinutes));
        return opening;
    }

    private static List<(BlockKind Kind, int Minutes, int Take)> PartsOf(LineupDrink drink, Episode episode, Bar bar, OrderSettings settings)
    {
        var pace = settings.Pace;
        List<(BlockKind, int, int)> parts = [];
        var takes = episode.TakesOf(drink);
        var doubles = drink.TastedSwapOuts + drink.UntastedSwapOuts;
        var stock = bar.Kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) && glass.Count > 0 ? glass.Count : int.MaxValue;
        var clean = stock - Math.Min(doubles, Math.Max(0, stock - 1));
        for (var take = 1; take <= takes; take++)
        {
            if (take > 1)
                parts.Add((BlockKind.Reset, pace.ResetMinutes, 0));
            if (clean == 0)
            {
                parts.Add((BlockKind.WashUp, pace.WashUpMinutes + (drink.Spec.Serve.Chilled ? pace.RechillMinutes : 0), 0));
                clean = stock;
            }

            parts.Add((BlockKind.Take, pace.TakeMinutes(drink.Spec.Method?.Kind), take));
            clean--;
        }

        parts.Add((BlockKind.Taste, pace.TasteMinutes, 0));
        if (settings.CloseUps)
            parts.Add((BlockKind.CloseUps, pace.CloseUpMinutes, 0));
        return parts;
    }

    private static Dictionary<Slug, GlassStock> StocksOf(IEnumerable<LineupDrink> lineup, Episode episode, Bar bar) =>
        lineup.Where(drink => !drink.Spec.Serve.Glass.IsEmpty)
            .GroupBy(drink => drink.Spec.Serve.Glass)
            .Select(group => bar.Kit.TryGetGlass(group.Key, out var glass) && glass.Count > 0
                ? new GlassStock(glass.Slug, glass.Name, glass.Count, group.Sum(drink => GlassesOf(drink, episode)))
                : null)
            .OfType<GlassStock>()
            .Where(stock => stock.Needed > stock.Count)
            .ToDictionary(stock => stock.Glass);

    private static int GlassesOf(LineupDrink drink, Episode episode) => episode.TakesOf(drink) + drink.TastedSwapOuts + drink.UntastedSwapOuts;

    private DrinkJob JobOf(LineupDrink drink, int place, List<(BlockKind, int, int)> parts, Dictionary<Slug, GlassStock> stocks, Dictionary<Slug, FreshPrep> preps, Bar bar)
    {
        var spec = drink.Spec;
        var glass = stocks.GetValueOrDefault(spec.Serve.Glass);
        var shares = spec.Method?.Kind is not (null or MethodKind.Built or MethodKind.Layered);
        return new()
        {
            Drink = drink,
            Place = place,
            Parts = parts,
            SetUp = new(drink.Station.Length > 0 ? drink.Station : Stations.Of(spec.Method?.Kind), spec.Method?.Kind, spec.Serve.Glass, drink.Backdrop),
            Traits = DrinkTraits.Of(spec, bar, Episode.Convention),
            Uses = [.. spec.Lines.Select(line => line.Ingredient).Distinct().Select(slug => PrepOf(slug, preps, bar)).OfType<FreshPrep>()],
            Glass = glass,
            Glasses = glass is null ? 0 : Math.Min(glass.Count, GlassesOf(drink, Episode)),
            SharesTools = shares,
            OnTools = shares
                ? spec.Lines.Where(line => line.Use is LineUse.Mixed or LineUse.Muddled)
                    .SelectMany(line => bar.Ingredients[line.Ingredient]?.Allergens ?? [])
                    .Where(entry => entry.Presence is AllergenPresence.Contains)
                    .Select(entry => entry.Allergen).ToHashSet()
                : new HashSet<Allergen>(),
        };
    }

    private FreshPrep? PrepOf(Slug slug, Dictionary<Slug, FreshPrep> preps, Bar bar)
    {
        if (preps.TryGetValue(slug, out var known))
            return known;
        if (!bar.Ingredients.TryGet(slug, out var ingredient) || ingredient.Fresh is not { } fresh || !MadeInHouse.Is(ingredient, bar.Ingredients))
            return null;
        var rest = Whole(fresh.Ready);
        var best = (int)Math.Floor(fresh.Best.TotalMinutes);
        var made = Settings.ReadyAt.TryGetValue(slug, out var at) ? Whole(at) : Math.Min(-Pace.HandsCleanMinutes, -rest);
        if (made + best >= Horizon)
            return null;
        var hands = Whole(MadeInHouse.HandsOn(ingredient, Pace, MillilitresOf(slug, bar)));
        return preps[slug] = new()
        {
            Ingredient = ingredient,
            Made = made,
            RestMinutes = rest,
            BestMinutes = best,
            BatchMinutes = Hands > 1 ? Pace.HandOverMinutes : hands,
            Beside = Hands > 1,
            HandsOnMinutes = hands,
            MayRepeat = Settings.FurtherBatches && rest <= 60,
        };
    }

    private double MillilitresOf(Slug slug, Bar bar) => Episode.Lineup.Sum(drink =>
        (Episode.TakesOf(drink) + drink.TastedSwapOuts)
        * drink.Spec.Lines.Where(line => line.Ingredient == slug)
            .Sum(line => line.Planned?.MillilitresNear(Episode.Convention, bar.House.BarSizes) ?? 0));
}
