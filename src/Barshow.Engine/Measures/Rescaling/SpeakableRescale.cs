namespace Barshow.Engine.Measures.Rescaling;

/// <summary>
/// Rescales a whole metric drink so that every line can be both poured and said in both units, with the least bend of its ratios: not line by line,
/// but by one factor for the drink, found by an exact search.
/// </summary>
/// <remarks>
/// Every line may become any speakable amount; new over old is that line's ratio. A choice of amounts bends the drink by (h - l) / (h + l), where h and l are the
/// highest and lowest of the ratios, and its factor lies midway. So the best choice is the narrowest window over the sorted ratios that holds one of every line,
/// and a walk with two pointers meets every window that can be best.
/// </remarks>
public static class SpeakableRescale
{
    /// <summary>The factors that are tried unless others are asked for: half the drink to twice the drink.</summary>
    public static (Rational Least, Rational Most) UsualFactors { get; } = (new(1, 2), 2);

    /// <summary>The ways of rescaling that are worth offering: the least bend first, then those that bend more and stay nearer to the drink's own size. Empty without lines, or when no amount in reach can be said.</summary>
    /// <param name="millilitres">The measured lines, each above nought.</param>
    /// <param name="grid">The marks that can be poured.</param>
    /// <param name="factors">The least and the most a line may be multiplied by.</param>
    /// <exception cref="ArgumentOutOfRangeException">A line or a factor is not above nought.</exception>
    public static IReadOnlyList<Rescale> Find(IReadOnlyList<Rational> millilitres, PourableGrid grid, (Rational Least, Rational Most)? factors = null)
    {
        ArgumentNullException.ThrowIfNull(millilitres);
        ArgumentNullException.ThrowIfNull(grid);
        var (least, most) = factors ?? UsualFactors;
        if (least.Sign <= 0 || most < least)
            throw new ArgumentOutOfRangeException(nameof(factors), factors, "Factors run from above nought upward.");
        if (millilitres.FirstOrDefault(line => line.Sign <= 0, Rational.One) is { Sign: <= 0 } bad)
            throw new ArgumentOutOfRangeException(nameof(millilitres), bad, "A line is above nought.");

        // A hundredth of a millilitre is finer than any jigger and keeps the fractions small.
        Rational[] lines = [.. millilitres.Select(line => line.RoundTo(new(1, 100)))];
        var candidates = Candidates(lines, grid, least, most);
        return Frontier(Windows(candidates, lines.Length).Select(window => Choose(candidates, window, lines)));
    }

    /// <summary>One speakable amount for one line.</summary>
    private readonly record struct Candidate(int Line, Rational To, Rational Ratio);

    private static Candidate[] Candidates(Rational[] lines, PourableGrid grid, Rational least, Rational most)
    {
        var found = new List<Candidate>();
        for (var line = 0; line < lines.Length; line++)
        {
            var from = lines[line] * least;
            var to = lines[line] * most;
            for (var amount = from.RoundTo(grid.MillilitreStep); amount <= to; amount += grid.MillilitreStep)
            {
                if (amount >= from && grid.IsSpeakable(amount))
                    found.Add(new(line, amount, amount / lines[line]));
            }
        }

        return [.. found.OrderBy(candidate => candidate.Ratio).ThenBy(candidate => candidate.Line)];
    }

    // Every window that holds all lines and loses one when its first candidate is left out.
    private static IEnumerable<(int From, int To)> Windows(Candidate[] candidates, int lines)
    {
        if (lines == 0)
            yield break;
        var held = new int[lines];
        var missing = lines;
        var from = 0;
        for (var to = 0; to < candidates.Length; to++)
        {
            if (held[candidates[to].Line]++ == 0)
                missing--;
            while (missing == 0)
            {
                if (held[candidates[from].Line] == 1)
                    yield return (from, to);
                if (--held[candidates[from].Line] == 0)
                    missing++;
                from++;
            }
        }
    }

    private static Rescale Choose(Candidate[] candidates, (int From, int To) window, Rational[] lines)
    {
        var factor = (candidates[window.From].Ratio + candidates[window.To].Ratio) / 2;
        var chosen = new Candidate?[lines.Length];
        for (var i = window.From; i <= window.To; i++)
        {
            ref var best = ref chosen[candidates[i].Line];
            if (best is not { } held || (candidates[i].Ratio - factor).Abs() < (held.Ratio - factor).Abs())
                best = candidates[i];
        }

        var bent = chosen
            .Select((candidate, line) => new RescaledLine(lines[line], candidate!.Value.To, (candidate.Value.Ratio / factor).ToDouble() - 1))
            .ToArray();
        return new(factor, bent.Max(line => Math.Abs(line.Bend)), bent);
    }

    // Least bend first; of those that bend alike, the nearest to the drink's own size; then only what stays nearer still.
    private static List<Rescale> Frontier(IEnumerable<Rescale> rescales)
    {
        var frontier = new List<Rescale>();
        var nearest = double.PositiveInfinity;
        foreach (var rescale in rescales.OrderBy(rescale => Math.Round(rescale.LargestBend, 12)).ThenBy(Distance).ThenBy(rescale => rescale.Factor))
        {
            if (Distance(rescale) >= nearest)
                continue;
            nearest = Distance(rescale);
            frontier.Add(rescale);
        }

        return frontier;
    }

    private static double Distance(Rescale rescale) => Math.Round(Math.Abs(Math.Log(rescale.Factor.ToDouble())), 12);
}
