using Google.OrTools.Sat;

namespace Barshow.Engine.Planning.Lineup;

/// <content>The rules, one method each.</content>
internal sealed partial class LineupModel
{
    /// <summary>What the chosen drinks take of a thing is covered by the packs bought.</summary>
    private void BuyWhatIsPoured()
    {
        var uses = Open.SelectMany(place => _book.Candidates[place].Uses.Select(use => (Drink: _chosen[place]!, Use: use))).ToLookup(entry => entry.Use.Thing);
        for (var thing = 0; thing < _steps.Length; thing++)
        {
            var steps = _steps[thing];
            foreach (var drink in uses[thing].Select(entry => entry.Drink).Distinct())
                _model.AddImplication(drink, steps[0]);
            for (var step = 1; step < steps.Length; step++)
                _model.AddImplication(steps[step], steps[step - 1]);
            if (_book.Things[thing].Fruit is { } fruit)
                CoverFruit(thing, fruit, [.. uses[thing]]);
            else if (steps.Length > 1)
                _model.Add(Sum(uses[thing].Select(entry => (entry.Drink, entry.Use.Amount))) <= Held(thing));
        }
    }

    // A fruit is used by halves: pressed, its peel cut before, or cut in wedges or wheels.
    private void CoverFruit(int thing, FruitShape shape, IReadOnlyList<(BoolVar Drink, Use Use)> uses)
    {
        if (_steps[thing].Length == 1)
            return;
        LinearExpr Asked(int facet) => Sum(uses.Where(entry => entry.Use.Facet == facet).Select(entry => (entry.Drink, entry.Use.Amount)));
        var most = _book.Things[thing].Steps[^1].Holds / CandidateBook.Scale;
        var plain = _model.NewIntVar(0, 2 * most, "pressed halves");
        var halves = new List<LinearExpr> { plain };
        var pressed = new List<LinearExpr> { plain };
        for (var i = 0; i < shape.Cuts.Count; i++)
        {
            var cut = shape.Cuts[i];
            var whole = _model.NewIntVar(0, most, "cut whole");
            var lone = _model.NewIntVar(0, cut.PerHalf > 0 ? 1 : 0, "cut half");
            halves.Add(2 * whole + lone);
            if (cut.Pressed)
                pressed.Add(2 * whole + lone);
            _model.Add(Asked(2 + i) <= cut.PerFruit * CandidateBook.Scale * whole + cut.PerHalf * CandidateBook.Scale * lone);
        }

        if (shape.JuiceEach > 0)
            _model.Add(2 * Asked(0) <= shape.JuiceEach * LinearExpr.Sum(pressed));
        _model.Add(Asked(1) <= CandidateBook.Scale * LinearExpr.Sum(pressed));
        _model.Add(CandidateBook.Scale * LinearExpr.Sum(halves) <= 2 * Held(thing));
    }

    private void ChooseSoMany() => Keep(RequirementKind.Count, LinearExpr.Sum(OpenDrinks), _book.Count, _book.Count, always: _switches ? LinearExpr.Sum(OpenDrinks) <= _book.Count : null);

    /// <summary>Of two drinks that are one under two names, one at most.</summary>
    private void ChooseNoDrinkTwice()
    {
        foreach (var (_, place) in Asked(RequirementKind.Alike))
        {
            foreach (var (first, second) in _book.Alike)
            {
                if (_chosen[first] is { } one && _chosen[second] is { } other)
                    Keep(place, one + other, 0, 1);
            }
        }
    }

    private void KeepMustHaves()
    {
        foreach (var (requirement, place) in Asked(RequirementKind.MustHave))
        {
            var drink = Places.Where(candidate => _book.Candidates[candidate].Slug == requirement.Subject).Select(candidate => _chosen[candidate]).FirstOrDefault();
            // A drink that is not in the catalogue, or is ruled out, cannot be kept.
            Keep(place, drink is null ? LinearExpr.Constant(0) : drink, 1, 1);
        }
    }

    /// <summary>A drink that breaks a requirement by itself is out; without switches it is not in the model at all.</summary>
    private void LeaveOutWhatBreaksARequirement()
    {
        if (!_switches)
            return;
        foreach (var place in Open)
            foreach (var broken in _book.Candidates[place].Breaks)
                _model.AddImplication(_kept[broken]!, _chosen[place]!.Not());
    }

    private void CapFamilies()
    {
        foreach (var (_, place) in Asked(RequirementKind.FamilyCap))
        {
            for (var feature = 0; feature < _book.Features.Count; feature++)
            {
                if (_book.IsFamily[feature])
                    Keep(place, LinearExpr.Sum(With(feature)), 0, _book.Question.MostOfAFamily!.Value);
            }
        }
    }

    private void ReachFloors()
    {
        foreach (var (requirement, place) in Asked(RequirementKind.Floor))
            Keep(place, LinearExpr.Sum(Open.Where(drink => _book.Candidates[drink].Floors.Contains(place)).Select(drink => _chosen[drink]!)), requirement.Floor!.AtLeast, _book.Count);
    }

    private void KeepSomeWithoutAlcohol() =>
        Keep(RequirementKind.AlcoholFree, LinearExpr.Sum(Open.Where(drink => _book.Candidates[drink].AlcoholFree).Select(drink => _chosen[drink]!)), _book.Question.AlcoholFree, _book.Count);

    /// <summary>Each drink stands in a glass of the kit, and no glass is used oftener than it can be washed.</summary>
    private void LetGlassesGoRound()
    {
        foreach (var (_, place) in Asked(RequirementKind.Glasses))
        {
            var kit = _book.Question.Bar.Kit.Glasses;
            var served = kit.Select(_ => new List<BoolVar>()).ToArray();
            foreach (var drink in Open)
            {
                var glasses = _book.Candidates[drink].Glasses;
                if (glasses.Count == 0)
                    continue;
                var places = glasses.Select(glass =>
                {
                    var stands = glasses.Count == 1 ? _chosen[drink]! : _model.NewBoolVar($"{_book.Candidates[drink].Slug} in {kit[glass].Slug}");
                    served[glass].Add(stands);
                    return stands;
                }).ToList();
                if (glasses.Count > 1)
                    _model.Add(LinearExpr.Sum(places) == _chosen[drink]!);
            }

            for (var glass = 0; glass < kit.Count; glass++)
            {
                var room = Math.Min(10_000, kit[glass].Count) * (long)Math.Clamp(_book.Question.GlassRounds, 1, 100);
                if (served[glass].Count > 0 && room < (long)_book.Count * _book.Question.Takes)
                    Keep(place, Math.Max(1, _book.Question.Takes) * LinearExpr.Sum(served[glass]), 0, room);
            }
        }
    }

    private void CarryTheViewerOnOneBottle()
    {
        if (_book.BottleAtHome is { } holds)
            Keep(RequirementKind.BottleAtHome, Bottle, 0, holds);
    }

    private void CarryTheShootOnItsBottles()
    {
        if (_book.BottleOnSet is { } holds)
            Keep(RequirementKind.BottlesOnSet, Bottle, 0, holds);
    }

    private void StayWithinMoney()
    {
        if (_book.MoneyChecked && _book.Question.MostMoney is { } money)
            Keep(RequirementKind.Money, Cost, 0, (long)Math.Floor(Math.Clamp(money, 0, 1_000_000_000) * 100));
    }

    private void StayWithinThings()
    {
        if (_book.Question.MostThings is { } things)
            Keep(RequirementKind.Things, Things, 0, Math.Max(0, things));
    }

    private IEnumerable<BoolVar> OpenDrinks => Open.Select(place => _chosen[place]!);

    private LinearExpr Bottle => Sum(Open.Select(place => (_chosen[place]!, _book.Candidates[place].Bottle)));

    private LinearExpr Things => LinearExpr.Sum(_steps.Select(steps => steps[0]));

    private LinearExpr Cost => Sum(_steps.SelectMany((steps, thing) => steps.Select((step, index) => (step, StepCost(thing, index)))));

    private long StepCost(int thing, int step) => _book.Things[thing].Steps[step].Cost - (step == 0 ? 0 : _book.Things[thing].Steps[step - 1].Cost);

    private LinearExpr Held(int thing) => Sum(_steps[thing].Select((step, index) =>
        (step, _book.Things[thing].Steps[index].Holds - (index == 0 ? 0 : _book.Things[thing].Steps[index - 1].Holds))));

    private IEnumerable<BoolVar> With(int feature) => Open.Where(place => _book.Candidates[place].Features.Contains(feature)).Select(place => _chosen[place]!);

    private IEnumerable<(Requirement Requirement, int Place)> Asked(RequirementKind kind) =>
        _book.Requirements.Select((requirement, place) => (requirement, place)).Where(entry => entry.requirement.Kind == kind && IsOn(entry.place));

    private void Keep(RequirementKind kind, LinearExpr value, long low, long high, BoundedLinearExpression? always = null)
    {
        if (always is not null)
            _model.Add(always);
        foreach (var (_, place) in Asked(kind))
            Keep(place, value, low, high);
    }

    private void Keep(int requirement, LinearExpr value, long low, long high)
    {
        var rule = _model.AddLinearConstraint(value, low, Math.Max(low, high));
        if (_kept[requirement] is { } kept)
            rule.OnlyEnforceIf(kept);
    }

    private static LinearExpr Sum(IEnumerable<(BoolVar Variable, long Weight)> terms)
    {
        var all = terms.Where(term => term.Weight != 0).ToList();
        return all.Count == 0 ? LinearExpr.Constant(0) : LinearExpr.WeightedSum(all.Select(term => term.Variable), all.Select(term => term.Weight));
    }
}
