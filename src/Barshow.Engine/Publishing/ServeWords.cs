using System.Globalization;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing;

/// <summary>Says in a line how a drink is made and served.</summary>
public static class ServeWords
{
    /// <summary>All of it: "Shaken 12 s, fine-strained. Chilled coupe (or Nick and Nora). Garnish: lime wheel (or lime twist)."</summary>
    public static string Of(Spec spec, BarKit kit)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(kit);
        return string.Join(' ', new[] { Method(spec), Glass(spec, kit), Garnish(spec) }.Where(words => words.Length > 0).Select(words => Casing.AtStart(words) + "."));
    }

    /// <summary>The method: "shaken 12 s, fine-strained"; empty when it was not said.</summary>
    public static string Method(Spec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Method is not { } method)
            return Strain(spec.Serve.Strain);
        var words = (method.DryShake ? "shaken without ice, then " : "") + method.Name
            + (method.Seconds is { } seconds ? string.Create(CultureInfo.InvariantCulture, $" {seconds} s") : "")
            + (method.Pours is { } pours ? string.Create(CultureInfo.InvariantCulture, $" {pours} times") : "");
        var strain = Strain(spec.Serve.Strain);
        return strain.Length > 0 ? $"{words}, {strain}" : words;
    }

    /// <summary>The glass with its ice: "chilled coupe (or Nick and Nora)", "highball, crushed ice, straw"; empty when none is named.</summary>
    public static string Glass(Spec spec, BarKit kit)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(kit);
        var serve = spec.Serve;
        var words = new List<string>();
        if (!serve.Glass.IsEmpty)
        {
            var known = kit.TryGetGlass(serve.Glass, out var glass);
            var instead = serve.GlassesInstead.Count > 0 ? serve.GlassesInstead : known ? glass!.Instead : [];
            words.Add((serve.Chilled ? "chilled " : "") + Name(serve.Glass, kit)
                + (instead.Count > 0 ? $" (or {string.Join(", or ", instead.Take(1).Select(other => Name(other, kit)))})" : ""));
        }

        if (Ice(serve.Ice) is { Length: > 0 } ice)
            words.Add(ice);
        if (serve.Straw)
            words.Add("straw");
        return string.Join(", ", words);
    }

    /// <summary>The garnish with what will do instead: "garnish: lime wheel (or lime twist)"; empty for none.</summary>
    public static string Garnish(Spec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return spec.Garnish is not { } garnish ? ""
            : "garnish: " + garnish.Text
                + (garnish.Instead.Count > 0 ? $" (or {garnish.Instead[0].Text})" : "");
    }

    /// <summary>The ice in the glass: "crushed ice"; empty for none.</summary>
    public static string Ice(IceKind ice) => ice switch
    {
        IceKind.Cubed => "cubed ice",
        IceKind.Crushed => "crushed ice",
        IceKind.Large => "one large piece of ice",
        _ => "",
    };

    /// <summary>The name of a glass as it stands in a sentence: "coupe", "Nick and Nora".</summary>
    public static string Name(Slug glass, BarKit kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        if (!kit.TryGetGlass(glass, out var known))
            return glass.Text.Replace('-', ' ');
        // One word is a kind of glass and goes small; a name of several words that are names stays as it is.
        return known.Name.Contains(' ', StringComparison.Ordinal) && known.Name.Split(' ').Skip(1).Any(word => char.IsUpper(word[0])) ? known.Name : Casing.Inside(known.Name);
    }

    private static string Strain(Straining strain) => strain switch
    {
        Straining.Single => "strained",
        Straining.Fine => "fine-strained",
        Straining.Open => "poured with its ice",
        _ => "",
    };
}
