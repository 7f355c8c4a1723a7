using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Cuts a brief written as text into its parts. The grammar is in tests/specs/reading-a-brief.md.</summary>
internal sealed class BriefTextSplitter(List<Finding> findings)
{
    public const int MostCharacters = 256 * 1024;
    public const int MostDrinks = 60;
    public const int MostLines = 40;

    // A slip of the editor leaves one or two signs; a picture leaves many.
    private const int MostSigns = 2;

    public BriefParts Split(string text)
    {
        var parts = new BriefParts();
        foreach (var block in Blocks(text))
        {
            if (parts.Title is null)
                TakeHeader(parts, block);
            else if (parts.Drinks.Count == 0 && block.All(line => BriefKeys.TrySplit(line.Text, out var key, out _) && BriefKeys.IsHeader(key)))
                block.ForEach(line => TakeKey(parts, line));
            else if (parts.Drinks.Count == MostDrinks)
            {
                findings.Add(BriefFindings.TooLong(block[0].Line, "60 drinks"));
                break;
            }
            else
                parts.Drinks.Add(Drink(block));
        }

        return parts;
    }

    private List<List<BriefText>> Blocks(string text)
    {
        var blocks = new List<List<BriefText>>();
        List<BriefText>? open = null;
        int number = 0, firstBroken = 0, broken = 0, read = 0;
        foreach (var raw in text.AsSpan().EnumerateLines())
        {
            number++;
            read += raw.Length + 1;
            if (read > MostCharacters)
            {
                findings.Add(BriefFindings.TooLong(number, "256 kB"));
                break;
            }

            var line = raw.Trim().TrimStart('\uFEFF');
            if (line.IsEmpty)
            {
                open = null;
                continue;
            }

            var kept = line.ToString();
            if (NoText(line) is var signs and > 0)
            {
                if (signs > MostSigns)
                    (firstBroken, kept) = (broken++ == 0 ? number : firstBroken, "");
                else
                {
                    kept = string.Concat(kept.Where(c => !IsNoText(c))).Trim();
                    findings.Add(BriefFindings.WithoutSigns(number));
                }
            }

            if (open is null)
                blocks.Add(open = []);
            // The first line of a block keeps its place, or the next would be taken for the title or the drink's name.
            if (kept.Length > 0 || open.Count == 0)
                open.Add(new(kept, number));
        }

        if (broken > 0)
            findings.Add(BriefFindings.NotText(firstBroken, broken));
        blocks.RemoveAll(block => block.TrueForAll(line => line.Text.Length == 0));
        return blocks;
    }

    private void TakeHeader(BriefParts parts, List<BriefText> block)
    {
        parts.Title = block[0];
        foreach (var line in block.Skip(1))
            TakeKey(parts, line);
    }

    private void TakeKey(BriefParts parts, BriefText line)
    {
        if (BriefKeys.TrySplit(line.Text, out var key, out var value))
            parts.Keys.Add(new(key, value, line.Line));
        else
            findings.Add(BriefFindings.NoKey(line));
    }

    private DrinkParts Drink(List<BriefText> block)
    {
        var drink = new DrinkParts(block[0]);
        foreach (var line in block.Skip(1))
        {
            if (drink.Lines.Count == MostLines)
            {
                findings.Add(BriefFindings.TooLong(line.Line, "40 lines for one drink"));
                break;
            }

            if (AtTime(line) is { } at)
                drink.Keys.Add(at);
            else if (!BriefKeys.TrySplit(line.Text, out var key, out var value) || !BriefKeys.IsDrink(key))
                drink.Lines.Add(new(line));
            else if (key == BriefKeys.Was && drink.Lines.Count > 0)
                drink.Lines[^1].Was = new(value, line.Line);
            else
                drink.Keys.Add(new(key, value, line.Line));
        }

        return drink;
    }

    // "At 4:31" has no colon after its key.
    private static BriefKey? AtTime(BriefText line) =>
        line.Text.StartsWith("at ", StringComparison.OrdinalIgnoreCase) && line.Text.Length > 3 && char.IsAsciiDigit(line.Text[3])
            ? new BriefKey(BriefKeys.At, line.Text[3..].Trim(), line.Line)
            : null;

    private static int NoText(ReadOnlySpan<char> line)
    {
        var count = 0;
        foreach (var c in line)
            count += IsNoText(c) ? 1 : 0;
        return count;
    }

    private static bool IsNoText(char c) => (char.IsControl(c) && c != '\t') || c == '\uFFFD';
}
