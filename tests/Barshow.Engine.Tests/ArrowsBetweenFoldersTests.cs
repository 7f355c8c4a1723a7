using Barshow.Engine.Findings;
using NetArchTest.Rules;

namespace Barshow.Engine.Tests;

/// <summary>The arrows of the house: which folder of the engine may know which.</summary>
public class ArrowsBetweenFoldersTests
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Findings"] = [],
        ["Names"] = [],
        ["Measures"] = ["Findings", "Names"],
        ["Ingredients"] = ["Findings", "Names", "Measures"],
        ["Specs"] = ["Findings", "Names", "Measures", "Ingredients"],
        ["Episodes"] = ["Findings", "Names", "Measures", "Ingredients", "Specs"],
        ["Featured"] = ["Findings", "Names", "Measures", "Ingredients", "Specs", "Episodes"],
        ["Callouts"] = ["Findings", "Names", "Measures", "Ingredients", "Specs", "Episodes"],
        ["Planning"] = ["Findings", "Names", "Measures", "Ingredients", "Specs", "Episodes", "Featured"],
        ["Shooting"] = ["Findings", "Names", "Measures", "Ingredients", "Specs", "Episodes", "Planning"],
        ["Publishing"] = ["Findings", "Names", "Measures", "Ingredients", "Specs", "Episodes", "Planning", "Shooting", "Callouts", "Featured"],
    };

    public static TheoryData<string> Folders => [.. MayKnow.Keys];

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_knows_only_the_folders_below_it(string folder)
    {
        var forbidden = MayKnow.Keys.Except(MayKnow[folder]).Where(other => other != folder).Select(other => $"Barshow.Engine.{other}").ToArray();

        var result = Types.InAssembly(typeof(Finding).Assembly)
            .That().ResideInNamespace($"Barshow.Engine.{folder}")
            .ShouldNot().HaveDependencyOnAny(forbidden)
            .GetResult();

        Assert.True(result.IsSuccessful, $"{folder} knows too much: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    [Fact]
    public void Every_folder_of_the_engine_stands_in_the_table()
    {
        var folders = typeof(Finding).Assembly.GetTypes()
            .Select(type => type.Namespace)
            .Where(name => name?.StartsWith("Barshow.Engine.", StringComparison.Ordinal) == true)
            .Select(name => name!.Split('.')[2])
            .Distinct();

        Assert.Empty(folders.Except(MayKnow.Keys));
    }

    [Fact]
    public void The_engine_knows_no_database_and_no_web()
    {
        var names = typeof(Finding).Assembly.GetReferencedAssemblies().Select(assembly => assembly.Name!);

        Assert.DoesNotContain(names, name => name.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal)
            || name.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal) || name.StartsWith("Barshow.", StringComparison.Ordinal));
    }
}
