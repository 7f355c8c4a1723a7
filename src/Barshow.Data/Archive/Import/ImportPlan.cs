namespace Barshow.Data.Archive.Import;

/// <summary>What an import does with one thing.</summary>
public enum ImportStep
{
    /// <summary>It is new here and is added.</summary>
    Add,

    /// <summary>It is here in another state, which is replaced and kept in its history.</summary>
    Change,

    /// <summary>It is here already, just so, and is left.</summary>
    Leave,

    /// <summary>It lies in the archive's bin and is added to the bin here.</summary>
    AddToBin,
}

/// <summary>What an import does with one thing.</summary>
/// <param name="Kind">What sort of thing: "drinks".</param>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Name">The name that lists show.</param>
/// <param name="Step">What is done.</param>
/// <param name="Version">The version that is here now; 0 when there is none.</param>
public sealed record ImportLine(string Kind, string Slug, string Name, ImportStep Step, int Version);

/// <summary>What an import adds, changes and leaves.</summary>
/// <param name="Lines">One for each thing in the archive, in the order they are imported.</param>
/// <param name="Untouched">How many things are here that the archive does not have; they stay as they are.</param>
public sealed record ImportPlan(IReadOnlyList<ImportLine> Lines, int Untouched)
{
    /// <summary>Why it cannot be carried out, a sentence; null when it can.</summary>
    public string? Objection { get; init; }

    /// <summary>How many things meet that step.</summary>
    public int Count(ImportStep step) => Lines.Count(line => line.Step == step);

    /// <summary>Whether both would do the same.</summary>
    public bool DoesTheSameAs(ImportPlan other) => other is not null && Lines.SequenceEqual(other.Lines);
}

/// <summary>How an import went.</summary>
/// <param name="Plan">What was done, or, when nothing was, what would be done now.</param>
/// <param name="Done">Whether it was done; false when the house changed after the plan was made, or the plan cannot be carried out.</param>
public sealed record ImportResult(ImportPlan Plan, bool Done);
