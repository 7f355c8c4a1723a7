using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Specs.Cautions;

/// <summary>The usual cautions in plain words. None of them replaces local rules, the label in the hand or licensed practice.</summary>
public static class CautionWords
{
    /// <summary>What closes every description.</summary>
    public const string Closing = "For adults of legal drinking age. Drink responsibly, never drink and drive. Follow local rules and licensed practice.";

    /// <summary>The name of a class of allergen where the audience is; sulphur is spelt as the region spells it.</summary>
    public static string NameOf(Allergen allergen, string region) => allergen switch
    {
        Allergen.Gluten => "cereals containing gluten",
        Allergen.Crustaceans => "crustacean shellfish",
        Allergen.Eggs => "egg",
        Allergen.Fish => "fish",
        Allergen.Peanuts => "peanut",
        Allergen.Soybeans => "soy",
        Allergen.Milk => "milk",
        Allergen.Nuts => "tree nuts",
        Allergen.Celery => "celery",
        Allergen.Mustard => "mustard",
        Allergen.Sesame => "sesame",
        Allergen.Sulphites => region == "US" ? "sulfites" : "sulphites",
        Allergen.Lupin => "lupin",
        Allergen.Molluscs => "molluscs",
        _ => throw new ArgumentOutOfRangeException(nameof(allergen), allergen, "No such allergen."),
    };

    /// <summary>A class of allergen with what it comes from: "almond (tree nuts)"; the class alone where the source says no more.</summary>
    public static string NameOf(Allergen allergen, string? from, string region)
    {
        var name = NameOf(allergen, region);
        return string.IsNullOrWhiteSpace(from) || from.Contains(name, StringComparison.OrdinalIgnoreCase) ? name : $"{from} ({name})";
    }

    /// <summary>The usual caution for a hazard, to follow its name and a colon.</summary>
    public static string Of(Hazard hazard) => hazard switch
    {
        // US Food Code 3-302.13 asks for pasteurised egg in drinks that are not cooked.
        Hazard.RawEgg => "use pasteurised egg, especially for the young, old, pregnant or unwell.",
        // US FDA consumer update on grapefruit juice and medicines: CYP3A4.
        Hazard.Grapefruit => "it changes how some medicines work; ask your pharmacist.",
        // 21 CFR 172.575 limits quinine in bought tonic to 83 parts per million; home-made tonic has no known dose.
        Hazard.Quinine => "prefer bought tonic; avoid it in pregnancy or if your medicines forbid it.",
        // Infant botulism: public-health advice everywhere.
        Hazard.Honey => "never for a child under twelve months.",
        Hazard.Flame => "never pour from a bottle near a flame, keep a lid at hand, put it out before drinking, mind the hot rim and local fire rules.",
        Hazard.DryIce => "never swallow or touch it, none in a glass that is drunk, never seal it in, air the room.",
        Hazard.InfusedOil => "make fresh, chill at once, use within 4 days or freeze; botulism cannot be seen or smelt.",
        Hazard.Chilli => "wear gloves, keep it from your eyes, taste before you pour.",
        Hazard.FreshJuice => "not pasteurised; take care for the young, old, pregnant or unwell.",
        // US Food Code 3-501.16: 41 °F (5 °C) or below.
        Hazard.KeepCold => "at 5 °C or below; throw out after 4 hours in the warm.",
        Hazard.OverproofSpirit => "lights without warming; keep it from flames, measure it small.",
        Hazard.Charcoal => "binds medicines, the contraceptive pill among them; we advise against it.",
        Hazard.Caffeine => "hides how drunk one is; go slowly.",
        _ => throw new ArgumentOutOfRangeException(nameof(hazard), hazard, "No such hazard."),
    };

    /// <summary>What a hazard is called: "Raw egg".</summary>
    public static string NameOf(Hazard hazard) => hazard switch
    {
        Hazard.RawEgg => "Raw egg",
        Hazard.Grapefruit => "Grapefruit",
        Hazard.Quinine => "Quinine (tonic)",
        Hazard.Honey => "Honey",
        Hazard.Flame => "Flame",
        Hazard.DryIce => "Dry ice",
        Hazard.InfusedOil => "Garlic, herbs or vegetables in oil",
        Hazard.Chilli => "Chilli",
        Hazard.FreshJuice => "Fresh juice",
        Hazard.KeepCold => "Keep cold",
        Hazard.OverproofSpirit => "Spirit of 50 % and more",
        Hazard.Charcoal => "Activated charcoal",
        Hazard.Caffeine => "Caffeine",
        _ => throw new ArgumentOutOfRangeException(nameof(hazard), hazard, "No such hazard."),
    };
}
