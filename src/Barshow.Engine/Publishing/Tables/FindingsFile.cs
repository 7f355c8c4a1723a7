using System.Text.Json.Nodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>Findings as a JSON array.</summary>
public static class FindingsFile
{
    /// <summary>The array, an object for each finding; what does not apply to one is left out of it.</summary>
    public static string Write(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        return ScriptJson.Write(new JsonArray([.. findings.Select(Of)])) + "\n";
    }

    private static JsonObject Of(Finding finding)
    {
        var json = new JsonObject
        {
            ["kind"] = finding.Kind.Name,
            ["severity"] = finding.Severity.ToString().ToLowerInvariant(),
            ["subject"] = finding.Subject,
            ["message"] = finding.Message,
            ["remedy"] = finding.Remedy,
        };
        if (finding.Line is { } line)
            json["line"] = line;
        if (finding.TimeSeconds is { } time)
            json["time_s"] = time;
        if (finding.Drink is { } drink)
            json["drink"] = drink;
        if (finding.Ingredient is { } ingredient)
            json["ingredient"] = ingredient;
        if (finding.Said is { } said)
            json["said"] = said;
        if (finding.Expected is { } expected)
            json["expected"] = expected;
        return json;
    }
}
