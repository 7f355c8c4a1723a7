namespace Barshow.Engine.Shooting.Order;

/// <summary>Reads off the blocks when each batch looks right.</summary>
internal static class FreshStretches
{
    public static IReadOnlyList<FreshStretch> Of(OrderDay day, IReadOnlyList<Block> blocks) =>
        [.. day.Preps.SelectMany(prep => Of(day, blocks, prep)).OrderBy(stretch => stretch.From).ThenBy(stretch => stretch.Prep)];

    private static IEnumerable<FreshStretch> Of(OrderDay day, IReadOnlyList<Block> blocks, FreshPrep prep)
    {
        List<TimeSpan> made = [TimeSpan.FromMinutes(prep.Made), .. blocks.Where(block => block.Kind is BlockKind.Batch && block.Prep == prep.Slug).Select(block => block.End).Order()];
        var users = day.Jobs.Where(job => job.Uses.Contains(prep))
            .Select(job => (job.Slug, Start: blocks.Where(block => block.Kind is BlockKind.Take && block.Drink == job.Slug && !block.Filmed).Select(block => block.Start).DefaultIfEmpty(TimeSpan.MaxValue).Min()))
            .ToList();
        for (var batch = 0; batch < made.Count; batch++)
        {
            var next = batch + 1 < made.Count ? made[batch + 1] : TimeSpan.MaxValue;
            var rest = TimeSpan.FromMinutes(prep.RestMinutes);
            yield return new(prep.Slug, prep.Name, batch + 1, made[batch] + rest, made[batch] + TimeSpan.FromMinutes(prep.BestMinutes),
                [.. users.Where(user => (batch == 0 || user.Start >= made[batch]) && user.Start < next).OrderBy(user => user.Start).Select(user => user.Slug)]);
        }
    }
}
