using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Runs every example of tests/specs/reading-measures.md.</summary>
public class ReadingMeasuresSpecTests
{
    private const string Arrow = " => ";

    private static string Page => Path.Combine(AppContext.BaseDirectory, "specs", "reading-measures.md");

    public static TheoryData<string, string> Lines => Examples("```line");

    public static TheoryData<string, string> Speech => Examples("```speech");

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_line_is_read_as_the_page_says(string line, string expected) => Assert.Equal(expected, Written(LineReader.Read(line)));

    [Theory]
    [MemberData(nameof(Speech))]
    public void Measures_are_found_in_speech_as_the_page_says(string speech, string expected)
    {
        // Brackets [| and |] mark the places.
        var text = speech.Replace("[|", "", StringComparison.Ordinal).Replace("|]", "", StringComparison.Ordinal);

        var found = MeasureFinder.Find(text);

        Assert.Equal(expected, found.Count == 0 ? "-" : string.Join(" | ", found.Select(Written)));
        var marked = found.Select(measure => measure.Whole).OrderByDescending(place => place.Start)
            .Aggregate(text, (marked, place) => marked.Insert(place.End, "|]").Insert(place.Start, "[|"));
        Assert.Equal(speech, marked);
    }

    [Fact]
    public void The_page_has_examples_of_both()
    {
        Assert.True(Lines.Count > 200);
        Assert.True(Speech.Count > 15);
    }

    private static string Written(FoundMeasure found) =>
        found.Second is { } second ? $"{found.Measure} = {second}" : found.Within is { } within ? $"{found.Measure} of {within}" : found.Measure.ToString();

    private static string Written(ReadLine read)
    {
        var amount = read.Second is { } second ? $"{read.Measure} = {second}" : read.Measure?.ToString() ?? "-";
        var columns = new List<string> { amount, read.Name.Length == 0 ? "-" : read.Name };
        if (read.Note is { } note)
            columns.Add($"({note})");
        if (read.Optional)
            columns.Add("optional");
        columns.AddRange(read.Findings.Select(finding => finding.Kind.Name));
        return string.Join(" | ", columns);
    }

    private static TheoryData<string, string> Examples(string fence)
    {
        var examples = new TheoryData<string, string>();
        var inside = false;
        foreach (var line in File.ReadLines(Page))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
                inside = !inside && line == fence;
            else if (inside && line.LastIndexOf(Arrow, StringComparison.Ordinal) is var at and >= 0)
                examples.Add(line[..at].TrimEnd(' '), line[(at + Arrow.Length)..]);
        }

        return examples;
    }
}
