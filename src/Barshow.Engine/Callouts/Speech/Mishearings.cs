namespace Barshow.Engine.Callouts.Speech;

/// <summary>Words that captions made by machine hear wrong, put right where an amount makes it plain. The text keeps its length, so every place stays.</summary>
/// <remarks>Common practice, no source: what people see in automatic captions of bar talk.</remarks>
internal static class Mishearings
{
    private static readonly HashSet<string> Numbers =
    [
        "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "fifteen", "twenty", "thirty", "forty", "fordy", "fifty", "sixty", "seventy", "eighty", "ninety", "half", "quarter", "quarters", "third", "thirds", "too",
    ];

    private static readonly HashSet<string> LikeMil = ["miles", "mile", "meals", "meal", "males", "male", "mel", "mels", "emails", "email", "mail", "mails", "males", "mills", "millimeters", "millimetres", "milliliter's", "mill's"];
    private static readonly HashSet<string> LikeOunce = ["once", "onces", "ounches", "ouncees", "announce", "announces", "bounce", "bounces", "ounce's", "ouncers"];
    private static readonly HashSet<string> Manners = ["whole", "full", "good", "big", "scant", "generous", "short", "heavy", "healthy", "fat", "nice", "single", "flat", "level", "solid", "proper"];
    private static readonly HashSet<string> NotAfterMiles = ["away", "from", "per", "an", "down", "long", "of", "road", "north", "south", "east", "west", "to", "walk", "drive", "later"];

    /// <summary>The text as it was meant.</summary>
    public static string MendedText(SpeechText speech, Func<int, bool> isIngredient)
    {
        char[]? mended = null;
        var tokens = speech.Tokens;
        for (var i = 0; i < tokens.Count; i++)
        {
            var word = tokens[i].Word;
            var before = i > 0 ? tokens[i - 1].Word : "";
            var after = i + 1 < tokens.Count ? tokens[i + 1].Word : "";
            if (word is "fordy" or "fourty")
                Put(i, i, "forty");
            else if (word is "fiddy" or "fitty")
                Put(i, i, "fifty");
            else if (word is "dashers" or "dashed" && IsNumber(before))
                Put(i, i, "dashes");
            else if (LikeMil.Contains(word) && IsNumber(before) && IsPlainlyMil(i, after))
                Put(i, i, "mil");
            else if (LikeOunce.Contains(word) && (IsNumber(before) || before is "an" or "a") && after is not ("more" or "again" or "upon" or "you" or "a" or "i" or "it" or "the" or "we"))
                Put(i, i, word.Length >= 6 ? "ounces" : "oz");
            else if (word is "ounce" && after is "is" && i > 0 && before is not ("one" or "an" or "half" or "quarter" or "1" or "a" or "per" or "fluid") && IsNumber(before))
                Put(i, i + 1, "ounces");
            else if (word is "dash" && after is "is" && IsNumber(before) && i + 2 < tokens.Count && tokens[i + 2].Word is "of")
                Put(i, i + 1, "dashes");
            else if (word is "and" && after is "ounce" && !IsNumber(before))
                Put(i, i, "an");
            else if (Manners.Contains(word) && before is "a" or "an" && after is "ounce" or "dash" or "teaspoon" or "tablespoon" or "barspoon")
                Put(i, i, "");
            else if (word is "m" && after is "l" or "ls" && IsNumber(before))
                Put(i, i + 1, "ml");
            else if (word is "half" && after is "in" or "and" && i + 3 < tokens.Count && tokens[i + 2].Word is "ounce" && before is not ("a" or "and" or "one"))
                Put(i + 1, i + 1, "an");
        }

        return mended is null ? speech.Text : new(mended);

        bool IsPlainlyMil(int i, string next) =>
            tokens[i].Word is "mills" or "mel" or "mels" || (!NotAfterMiles.Contains(next) || next is "of" && i + 2 < tokens.Count && (isIngredient(i + 2) || (i + 3 < tokens.Count && isIngredient(i + 3)))) && (OunceNear(i) || isIngredient(i + 1) || next is "of");

        bool OunceNear(int i)
        {
            for (var k = Math.Max(0, i - 8); k < i; k++)
            {
                if (tokens[k].Word is "ounce" or "ounces" or "oz")
                    return true;
            }

            return false;
        }

        void Put(int from, int to, string words)
        {
            var (start, end) = (tokens[from].Start, tokens[to].End);
            if (words.Length > end - start)
                return;
            mended ??= speech.Text.ToCharArray();
            for (var k = start; k < end; k++)
                mended[k] = k - start < words.Length ? words[k - start] : ' ';
        }
    }

    private static bool IsNumber(string word) => word.Length > 0 && (char.IsDigit(word[0]) || Numbers.Contains(word) || char.GetNumericValue(word[^1]) > 0);
}
