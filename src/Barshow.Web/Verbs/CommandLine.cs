using System.CommandLine;

namespace Barshow.Web.Verbs;

/// <summary>The verbs of the executable. Without one, the app serves.</summary>
public static class CommandLine
{
    /// <summary>Where the database lies, for every verb.</summary>
    public static Option<string?> Data { get; } = new("--data")
    {
        Description = "Folder of the database. Default: BARSHOW_DATA, else a folder of the user's own.",
        HelpName = "DIR",
        Recursive = true,
    };

    /// <summary>Runs the verb that <paramref name="args"/> names.</summary>
    /// <returns>0 when all is well, 1 for a call that cannot be carried out, 2 when a finding is a stop.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        var root = Root();
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
            return Refuse(parsed.Errors[0].Message);
        return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    }

    /// <summary>Says in one sentence why a call cannot be carried out.</summary>
    /// <returns>The exit code for it, 1.</returns>
    public static int Refuse(string sentence)
    {
        Console.Error.WriteLine($"barshow: {sentence}");
        return 1;
    }

    private static RootCommand Root()
    {
        var root = new RootCommand("Barshow plans, measures, preps, shoots and publishes an episode of mixed drinks.") { Data };
        ReadVerb.AddTo(root);
        ServeVerb.AddTo(root);
        CheckVerb.AddTo(root);
        PackageVerb.AddTo(root);
        PlanVerb.AddTo(root);
        ShootVerbs.AddTo(root);
        ExportVerb.AddTo(root);
        ImportVerb.AddTo(root);
        BackupVerb.AddTo(root);
        return root;
    }
}
