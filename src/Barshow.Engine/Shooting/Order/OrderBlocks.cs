using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Order;

/// <summary>Writes a solved order out as timed blocks.</summary>
internal sealed class OrderBlocks
{
    private readonly OrderDay _day;
    private readonly List<Block> _blocks = [];
    private int _time;

    private OrderBlocks(OrderDay day)
    {
        _day = day;
        _time = day.Start;
    }

    public static IReadOnlyList<Block> Of(OrderDay day, IReadOnlyList<OrderStop> stops)
    {
        OrderBlocks writer = new(day);
        writer.WriteFilmed();
        foreach (var (kind, minutes) in day.Opening)
            writer.Write(kind, minutes, kind is BlockKind.Intro ? "Introduction" : "Sponsor's read", "Talk comes first, the voice fresh.");
        var from = day.LastFilmed;
        foreach (var stop in stops)
        {
            writer.WriteBetween(from, stop);
            writer.WriteDrink(from, stop.Job);
            from = stop.Job;
        }

        writer.Write(BlockKind.Outro, day.Pace.OutroMinutes, "Signing off", "The day ends with it.");
        return [.. writer._blocks.OrderBy(block => block.Start).ThenBy(block => block.End)];
    }

    private void WriteFilmed()
    {
        foreach (var (film, drink) in _day.Filmed)
            _blocks.Add(new()
            {
                Kind = BlockKind.Take,
                Name = $"{drink?.Name ?? film.Drink.Text}, filmed",
                Drink = film.Drink,
                Take = 1,
                Start = film.Start,
                End = film.End,
                Filmed = true,
                Reason = "Filmed already.",
            });
    }

    private void WriteBetween(DrinkJob? from, OrderStop stop)
    {
        var (job, pace) = (stop.Job, _day.Pace);
        if (stop.Wash)
            Write(BlockKind.WashUp, pace.WashUpMinutes, "Wash-up", $"Clean glasses run out before {job.Name}.");
        foreach (var prep in stop.Batches)
            WriteBatch(prep, job);
        if (stop.Meal)
            Write(BlockKind.Meal, pace.MealMinutes, "Meal", $"A meal begins within {ShootClock.SayDuration(TimeSpan.FromMinutes(pace.MealByMinutes))} of the call.");
        if (stop.Break)
            Write(BlockKind.Break, pace.BreakMinutes, "Break", $"No stretch of work is longer than {pace.LongestStretchMinutes} min.");
        if (_day.ChangeMinutes(from, job) is > 0 and var minutes)
        {
            var changes = OrderDay.Changes(from, job);
            Write(BlockKind.Reset, minutes, $"Reset for {job.Name}", changes.Count == 0 ? "Same set-up." : $"Changes: {string.Join(", ", changes)}.", job.Slug);
        }

        if (stop.Wait > 0)
            Write(BlockKind.Wait, stop.Wait, $"Wait before {job.Name}", "Glasses must be cold and preps rested.", job.Slug);
    }

    private void WriteBatch(FreshPrep prep, DrinkJob job)
    {
        _time += prep.BatchMinutes;
        _blocks.Add(new()
        {
            Kind = BlockKind.Batch,
            Name = $"Fresh batch of {prep.Name.ToLowerInvariant()}",
            Prep = prep.Slug,
            Start = At(_time - prep.HandsOnMinutes),
            End = At(_time),
            Beside = prep.Beside,
            Reason = $"The batch before it has lost its looks when {job.Name} is filmed: it keeps {ShootClock.SayDuration(TimeSpan.FromMinutes(prep.BestMinutes))}.",
        });
        if (prep.Beside)
        {
            _time -= prep.BatchMinutes;
            Write(BlockKind.Reset, prep.BatchMinutes, $"Hand over the {prep.Name.ToLowerInvariant()}", "Made by another pair of hands.");
        }
    }

    private void WriteDrink(DrinkJob? from, DrinkJob job)
    {
        var next = 1;
        foreach (var (kind, minutes, take) in job.Parts)
        {
            next = Math.Max(next, take + 1);
            Write(kind, minutes, kind switch
            {
                BlockKind.Take => $"Take {take} of {job.Name}",
                BlockKind.Taste => $"Tasting {job.Name}",
                BlockKind.CloseUps => $"Close-ups of {job.Name}",
                BlockKind.WashUp => $"Wash-up within {job.Name}",
                _ => $"Reset for take {next} of {job.Name}",
            }, "", job.Slug, take, kind is BlockKind.Take ? job.SetUp : null);
        }

        if (_day.ComparisonMinutes(from, job) is > 0 and var comparison)
            Write(BlockKind.Comparison, comparison, $"{from!.Name} beside {job.Name}", "They are to be compared.", job.Slug);
    }

    private void Write(BlockKind kind, int minutes, string name, string reason, Slug drink = default, int take = 0, SetUp? setUp = null)
    {
        if (minutes <= 0)
            return;
        _blocks.Add(new() { Kind = kind, Name = name, Drink = drink, Take = take, Start = At(_time), End = At(_time + minutes), SetUp = setUp, Reason = reason });
        _time += minutes;
    }

    private static TimeSpan At(int minutes) => TimeSpan.FromMinutes(minutes);
}
