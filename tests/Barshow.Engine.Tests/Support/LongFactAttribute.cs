namespace Barshow.Engine.Tests.Support;

/// <summary>A fact that takes minutes and runs only where it is asked for.</summary>
public sealed class LongFactAttribute : FactAttribute
{
    public const string Switch = "BARSHOW_LONG_TESTS";

    public LongFactAttribute()
    {
        if (Environment.GetEnvironmentVariable(Switch) != "1")
            Skip = $"A long run: set {Switch}=1 to include it.";
    }
}
