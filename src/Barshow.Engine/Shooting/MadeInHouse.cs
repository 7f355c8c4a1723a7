using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning.Demand;

namespace Barshow.Engine.Shooting;

/// <summary>What is made for the day rather than opened: house preps and juices pressed from whole fruit.</summary>
internal static class MadeInHouse
{
    public static bool Is(Ingredient ingredient, IngredientShelf shelf) => ingredient.Prep is not null || Pressing.IsPressed(ingredient, shelf);

    /// <summary>How long hands are busy with it.</summary>
    public static TimeSpan HandsOn(Ingredient ingredient, ShootingPace pace, double millilitres) =>
        ingredient.Prep is { } prep ? prep.HandsOn : TimeSpan.FromMinutes(Math.Max(5, Math.Ceiling(pace.JuiceMinutesPerLitre * millilitres / 1000)));
}
