namespace Barshow.Engine.Tests.Specs;

/// <summary>Fenced blocks of a page under tests/specs, in order.</summary>
internal static class MarkdownExamples
{
    public static IReadOnlyList<(string Kind, string Text)> Of(string page)
    {
        var blocks = new List<(string, string)>();
        string? kind = null;
        var text = new List<string>();
        foreach (var line in File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "specs", page)))
        {
            if (kind is null && line.StartsWith("```", StringComparison.Ordinal))
            {
                kind = line[3..];
                text.Clear();
            }
            else if (line == "```")
            {
                blocks.Add((kind!, string.Join('\n', text)));
                kind = null;
            }
            else
                text.Add(line);
        }

        return blocks;
    }
}
