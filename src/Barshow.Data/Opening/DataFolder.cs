namespace Barshow.Data.Opening;

/// <summary>The folder that holds everything a house has saved.</summary>
/// <param name="Path">Its full path.</param>
public sealed record DataFolder(string Path)
{
    /// <summary>The environment variable that names it.</summary>
    public const string Variable = "BARSHOW_DATA";

    /// <summary>The database.</summary>
    public string Database => System.IO.Path.Combine(Path, "barshow.db");

    /// <summary>Where backups go unless another place is named.</summary>
    public string Backups => System.IO.Path.Combine(Path, "backups");

    /// <summary>The folder that was given, else the one the environment names, else one of the user's own.</summary>
    /// <param name="given">A path; null or empty when none was given.</param>
    public static DataFolder Resolve(string? given = null) => Resolve(given, Environment.GetEnvironmentVariable(Variable));

    internal static DataFolder Resolve(string? given, string? variable)
    {
        var path = !string.IsNullOrWhiteSpace(given) ? given
            : !string.IsNullOrWhiteSpace(variable) ? variable
            : System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "Barshow");
        return new(System.IO.Path.GetFullPath(path));
    }
}
