namespace Barshow.Engine.Findings;

/// <summary>One thing an engine has to say: what it is about, what is wrong in plain words with the numbers, and what would mend it.</summary>
public sealed record Finding
{
    /// <summary>Says something of <paramref name="subject"/>.</summary>
    /// <param name="kind">One of <see cref="FindingCatalogue"/>; it fixes the severity.</param>
    /// <param name="subject">What it is about, in the user's own words: a drink, an ingredient, a line.</param>
    /// <param name="message">What is wrong, a sentence with the numbers and their units.</param>
    /// <param name="remedy">What would mend it, a sentence.</param>
    public Finding(FindingKind kind, string subject, string message, string remedy)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(subject);
        ArgumentException.ThrowIfNullOrWhiteSpace(message);
        ArgumentException.ThrowIfNullOrWhiteSpace(remedy);
        Kind = kind;
        Subject = subject;
        Message = message;
        Remedy = remedy;
    }

    /// <summary>What sort of finding it is.</summary>
    public FindingKind Kind { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity => Kind.Severity;

    /// <summary>What it is about, in the user's own words.</summary>
    public string Subject { get; }

    /// <summary>What is wrong, a sentence with the numbers and their units.</summary>
    public string Message { get; }

    /// <summary>What would mend it, a sentence.</summary>
    public string Remedy { get; }

    /// <summary>The line of the text that was read, counted from 1.</summary>
    public int? Line { get; init; }

    /// <summary>The place in the text that was read, counted from 0.</summary>
    public TextPlace? Place { get; init; }

    /// <summary>Film time in seconds from the start of the film.</summary>
    public double? TimeSeconds { get; init; }

    /// <summary>The drink it belongs to, by name.</summary>
    public string? Drink { get; init; }

    /// <summary>The ingredient it belongs to, by name.</summary>
    public string? Ingredient { get; init; }

    /// <summary>What was said or written.</summary>
    public string? Said { get; init; }

    /// <summary>What was expected instead.</summary>
    public string? Expected { get; init; }
}
