namespace Barshow.Data.Rows;

/// <summary>One saved thing: the engine's own object whole, and beside it what lists are sorted and filtered by.</summary>
/// <typeparam name="T">The engine's type.</typeparam>
public abstract class Row<T>
    where T : class
{
    /// <summary>Which row this is, never used twice.</summary>
    public long Id { get; private set; }

    /// <summary>The name the thing is kept under. Among things that are not in the bin there is one of each.</summary>
    public string Slug { get; private set; } = "";

    /// <summary>Counts the saves from 1, and refuses a save made on an older one.</summary>
    public int Version { get; set; }

    /// <summary>When it was saved.</summary>
    public DateTimeOffset SavedAt { get; set; }

    /// <summary>Who saved it; empty when nobody signed.</summary>
    public string SavedBy { get; set; } = "";

    /// <summary>When it went to the bin; null while it is in use.</summary>
    public DateTimeOffset? DeletedAt { get; set; }

    /// <summary>The name that lists show.</summary>
    public string Name { get; private set; } = "";

    /// <summary>The thing itself.</summary>
    public T Document { get; private set; } = null!;

    /// <summary>Takes a new state of the thing, and from it what lists need.</summary>
    public void Take(T document)
    {
        Document = document;
        Slug = SlugOf(document);
        Name = NameOf(document);
        Describe(document);
    }

    /// <summary>The name the thing is kept under.</summary>
    public abstract string SlugOf(T document);

    /// <summary>The name that lists show.</summary>
    protected abstract string NameOf(T document);

    /// <summary>Fills the columns that lists are sorted and filtered by.</summary>
    protected abstract void Describe(T document);
}
