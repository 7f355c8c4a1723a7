namespace Barshow.Engine.Measures.Reading;

/// <content>Number words.</content>
internal static partial class Lexicon
{
    private static void AddNumbers(Dictionary<string, Lexeme> words)
    {
        string[] small =
        [
            "zero nought naught nil", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
            "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
        ];
        for (var number = 0; number < small.Length; number++)
            Cardinal(small[number], number);
        string[] tens = ["twenty", "thirty", "forty fourty", "fifty", "sixty", "seventy", "eighty", "ninety"];
        for (var ten = 0; ten < tens.Length; ten++)
            Cardinal(tens[ten], 10 * (ten + 2));
        Cardinal("dozen", 12);
        Cardinal("couple pair", 2);
        Add(words, "few several", lexeme => lexeme with { Cardinal = 3, Role = lexeme.Role | Role.Vague });
        Add(words, "hundred", lexeme => lexeme with { Scale = 100 });
        Add(words, "thousand", lexeme => lexeme with { Scale = 1000 });
        Add(words, "million", lexeme => lexeme with { Scale = 1_000_000 });
        Add(words, "oh", lexeme => lexeme with { SoundsLike = 0 });
        Add(words, "won", lexeme => lexeme with { SoundsLike = 1 });
        Add(words, "too to tew", lexeme => lexeme with { SoundsLike = 2 });
        Add(words, "for fore", lexeme => lexeme with { SoundsLike = 4 });
        Add(words, "ate", lexeme => lexeme with { SoundsLike = 8 });

        Share("half halves 'alf", 2);
        Share("quarter quarters", 4);
        string[] ordinals = ["third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];
        for (var i = 0; i < ordinals.Length; i++)
            Share($"{ordinals[i]} {ordinals[i]}s", i + 3);
        Share("sixteenth sixteenths", 16);
        Share("twentieth twentieths", 20);

        void Cardinal(string spellings, int number) => Add(words, spellings, lexeme => lexeme with { Cardinal = number });
        void Share(string spellings, int parts) => Add(words, spellings, lexeme => lexeme with { Share = new Rational(1, parts) });
    }
}
