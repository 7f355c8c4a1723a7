namespace Barshow.Engine.Findings;

/// <summary>How much a finding matters. Fixed for each kind by <see cref="FindingCatalogue"/>.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Someone will notice.</summary>
    Fix,

    /// <summary>Using it as it stands would mislead or harm.</summary>
    Stop,
}
