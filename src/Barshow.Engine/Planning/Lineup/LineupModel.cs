using Google.OrTools.Sat;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>The lineup as a model of whole numbers: which drinks are chosen, and which packs that makes a viewer buy.</summary>
/// <remarks>
/// One integer scale for amounts: thousandths of a millilitre, gram or piece; costs are cents, or packs where prices are missing.
/// Cost is at pack level: a thing has a chain of steps, each of which holds more and costs more.
/// </remarks>
internal sealed partial class LineupModel
{
    private readonly CandidateBook _book;
    private readonly bool _switches;
    private readonly IReadOnlySet<RequirementKind> _off;
    private readonly CpModel _model = new();
    private readonly BoolVar?[] _chosen;
    private readonly BoolVar[][] _steps;
    private readonly BoolVar?[] _kept;
    private readonly Lazy<BoolVar[]> _shown;
    private readonly Lazy<BoolVar[]> _made;

    /// <param name="book">The drinks and what they make a viewer buy.</param>
    /// <param name="switches">Whether each requirement may be switched off, to find the fewest to relax; else all hold.</param>
    /// <param name="off">Rules left out, for tests that show what each rule does.</param>
    public LineupModel(CandidateBook book, bool switches = false, IReadOnlySet<RequirementKind>? off = null)
    {
        _book = book;
        _switches = switches;
        _off = off ?? new HashSet<RequirementKind>();
        _kept = [.. book.Requirements.Select(requirement => switches ? _model.NewBoolVar($"keep {requirement.Words}") : null)];
        _chosen = [.. book.Candidates.Select(candidate => switches || !candidate.Breaks.Any(IsOn) ? _model.NewBoolVar(candidate.Slug.Text) : null)];
        _steps = [.. book.Things.Select(thing => thing.Steps.Select((_, step) => _model.NewBoolVar($"{thing.Slug} {step}")).ToArray())];
        _shown = new(ShowFeatures);
        _made = new(MakePreps);
        Rules();
    }

    public CpModel Model => _model;

    /// <summary>The drinks that a rule has not already ruled out, by place.</summary>
    public IEnumerable<int> Open => Places.Where(place => _chosen[place] is not null);

    private IEnumerable<int> Places => Enumerable.Range(0, _chosen.Length);

    /// <summary>What the solver chose, by place.</summary>
    public IReadOnlyList<int> Chosen(Func<BoolVar, bool> isTrue) => [.. Open.Where(place => isTrue(_chosen[place]!))];

    /// <summary>The requirements the solver let go.</summary>
    public IReadOnlyList<Requirement> LetGo(Func<BoolVar, bool> isTrue) =>
        [.. _book.Requirements.Where((_, place) => _kept[place] is { } kept && !isTrue(kept))];

    /// <summary>The drinks of a lineup already known, from which the solver starts.</summary>
    public void StartFrom(IReadOnlyCollection<int> lineup)
    {
        _model.ClearHints();
        foreach (var place in Open)
            _model.AddHint(_chosen[place]!, lineup.Contains(place));
        var tally = new LineupTally(_book);
        foreach (var place in lineup)
            tally.Add(place);
        for (var thing = 0; thing < _steps.Length; thing++)
        {
            var cost = tally.CostOf(thing);
            for (var step = 0; step < _steps[thing].Length; step++)
                _model.AddHint(_steps[thing][step], cost > 0 && (step == 0 || cost > _book.Things[thing].Steps[step - 1].Cost));
        }
    }

    private bool IsOn(int requirement) => !_off.Contains(_book.Requirements[requirement].Kind);

    private void Rules()
    {
        BuyWhatIsPoured();
        ChooseSoMany();
        ChooseNoDrinkTwice();
        KeepMustHaves();
        LeaveOutWhatBreaksARequirement();
        CapFamilies();
        ReachFloors();
        KeepSomeWithoutAlcohol();
        LetGlassesGoRound();
        CarryTheViewerOnOneBottle();
        CarryTheShootOnItsBottles();
        StayWithinMoney();
        StayWithinThings();
    }
}
