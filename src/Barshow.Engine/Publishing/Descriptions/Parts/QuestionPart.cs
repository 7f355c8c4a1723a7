using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>Answers to what viewers keep asking about the lineup's ingredients, the most used ingredient's first.</summary>
internal static class QuestionPart
{
    private const int ShortCount = 2;

    public static PartText Write(Episode episode, Bar bar)
    {
        var answers = UsedIngredient.Of(episode, bar)
            .SelectMany(used => used.Ingredient.Questions)
            .Select(question => DescriptionText.Line($"{question.Question} {question.Answer}"))
            .Distinct()
            .ToList();
        var whole = PartText.OfLines(DescriptionPart.Questions, answers);
        return answers.Count > ShortCount ? whole with { Short = string.Join('\n', answers.Take(ShortCount)), ShortLoses = $"all but {ShortCount} answers" } : whole;
    }
}
