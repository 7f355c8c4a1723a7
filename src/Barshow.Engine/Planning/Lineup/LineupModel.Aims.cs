using Google.OrTools.Sat;

namespace Barshow.Engine.Planning.Lineup;

/// <content>The aims.</content>
internal sealed partial class LineupModel
{
    /// <summary>What an aim counts; less is better, variety counts what is missing of it as a negative number.</summary>
    public LinearExpr ValueOf(Aim aim) => aim switch
    {
        Aim.Cost => Cost,
        Aim.Variety => -1 * LinearExpr.Sum(_shown.Value),
        Aim.Freshness => Sum(Open.Select(place => (_chosen[place]!, (long)_book.Candidates[place].Staleness))),
        _ => Sum(Open.Select(place => (_chosen[place]!, (long)_book.Candidates[place].Minutes))) + Sum(_made.Value.Select((prep, index) => (prep, (long)_book.Preps[index].Minutes))),
    };

    /// <summary>The last level, so that of equal lineups the same one is always taken: the drinks that come first by slug.</summary>
    public LinearExpr Order => Sum(Open.Select(place => (_chosen[place]!, (long)place)));

    /// <summary>With switches: the requirements that are kept, all of equal weight.</summary>
    public LinearExpr Kept => LinearExpr.Sum(_kept.Where(kept => kept is not null).Select(kept => kept!));

    /// <summary>With switches: how many drinks there are.</summary>
    public LinearExpr Drinks => LinearExpr.Sum(OpenDrinks);

    private BoolVar[] ShowFeatures() => [.. _book.Features.Select((feature, index) =>
    {
        var shown = _model.NewBoolVar(feature);
        _model.Add(LinearExpr.Sum(With(index)) >= shown);
        return shown;
    })];

    private BoolVar[] MakePreps()
    {
        var made = _book.Preps.Select(prep => _model.NewBoolVar($"make {prep.Prep.Slug}")).ToArray();
        foreach (var place in Open)
            foreach (var prep in _book.Candidates[place].Preps)
                _model.AddImplication(_chosen[place]!, made[prep]);
        return made;
    }
}
