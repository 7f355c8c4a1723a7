using System.Globalization;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Featured;

/// <summary>Tells whether a drink was featured before, by name and by what is in it.</summary>
/// <remarks>Specs are compared as ratio vectors over ingredient classes. The thresholds are our own, set so that the kinships of published manuals come out as they have them.</remarks>
public static class FeaturedMatcher
{
    // Of a hundred millilitres, fifteen may be exchanged before a drink is another: ¾ oz of syrup in place of ½ oz stays the same drink.
    private const double SameWithin = 0.15;

    // Under one name more may change: the presenter's own version of a drink is still that drink.
    private const double SameNameWithin = 0.35;

    private const double RelativeWithin = 0.2;

    /// <summary>Every feature that is the same drink or a close relative, nearest first; among equals the latest first.</summary>
    /// <param name="drink">The drink to be shown.</param>
    /// <param name="log">What was featured.</param>
    /// <param name="shelf">Where ingredients are looked up.</param>
    /// <param name="except">An episode that is not counted: the one the drink is planned for.</param>
    public static IReadOnlyList<FeatureMatch> Match(Spec drink, FeaturedLog log, IngredientShelf shelf, Slug except = default)
    {
        ArgumentNullException.ThrowIfNull(drink);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(shelf);
        return [.. log.Features
            .Where(feature => except.IsEmpty || feature.Episode != except)
            .Select(feature => Compare(drink, feature, shelf))
            .Where(match => match.Kinship != Kinship.New)
            .OrderByDescending(match => match.Kinship).ThenBy(match => match.Distance ?? 0).ThenByDescending(match => match.Feature.Date)];
    }

    /// <summary>How near a drink is to one that was featured.</summary>
    public static FeatureMatch Compare(Spec drink, Feature feature, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(drink);
        ArgumentNullException.ThrowIfNull(feature);
        ArgumentNullException.ThrowIfNull(shelf);
        var sameName = DrinkNames.Meet(drink, feature.Spec);
        DrinkShape now = DrinkShape.Of(drink, shelf), then = DrinkShape.Of(feature.Spec, shelf);
        if (now.Parts.Count == 0 || then.Parts.Count == 0)
            return new(sameName ? Kinship.SameDrink : Kinship.New, feature, null, sameName ? ["same name; the amounts of one are not known"] : []);

        var distance = DrinkShape.Distance(now, then, part => part.Key);
        var roles = DrinkShape.Distance(now, then, part => part.Role.ToString());
        var sameMethod = now.Method == then.Method || now.Method == MethodGroup.Unknown || then.Method == MethodGroup.Unknown;
        var kinship =
            sameName && distance <= SameNameWithin ? Kinship.SameDrink
            : distance <= SameWithin && sameMethod && now.Rim == then.Rim && now.Marks.SequenceEqual(then.Marks) ? Kinship.SameDrink
            : roles <= RelativeWithin && (sameMethod || distance <= SameWithin) ? Kinship.CloseRelative
            : Kinship.New;
        return new(kinship, feature, distance, kinship == Kinship.New ? [] : Reasons(now, then, sameName, sameMethod));
    }

    private static List<string> Reasons(DrinkShape now, DrinkShape then, bool sameName, bool sameMethod)
    {
        var reasons = new List<string>();
        var fresh = now.Parts.Where(part => then.Parts.All(other => other.Key != part.Key)).ToList();
        var gone = then.Parts.Where(part => now.Parts.All(other => other.Key != part.Key)).ToList();
        foreach (var part in fresh)
        {
            var replaced = gone.Find(other => other.Role == part.Role);
            if (replaced is null)
                reasons.Add($"{part.Name} added");
            else
            {
                gone.Remove(replaced);
                reasons.Add($"{part.Name} in place of {replaced.Name}");
            }
        }

        reasons.AddRange(gone.Select(part => $"without {part.Name}"));
        foreach (var part in now.Parts)
            if (then.Parts.FirstOrDefault(other => other.Key == part.Key) is { } before && Math.Abs(before.Share - part.Share) >= 0.05)
                reasons.Add(string.Create(CultureInfo.InvariantCulture, $"{part.Name} {(part.Share > before.Share ? "up" : "down")} from {before.Share:P0} to {part.Share:P0} of the liquid").Replace(" %", " %", StringComparison.Ordinal));
        reasons.AddRange(now.Marks.Except(then.Marks).Select(mark => $"{mark} added"));
        reasons.AddRange(then.Marks.Except(now.Marks).Select(mark => $"without {mark}"));
        if (now.Rim != then.Rim)
            reasons.Add(now.Rim ? "with a rim" : "without the rim");
        if (!sameMethod)
            reasons.Add($"{now.Method.ToString().ToLowerInvariant()} where it was {then.Method.ToString().ToLowerInvariant()}");
        if (reasons.Count == 0)
            reasons.Add(sameName ? "same name, same amounts" : "same amounts under another name");
        return reasons;
    }
}
