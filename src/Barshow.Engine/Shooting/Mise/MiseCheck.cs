namespace Barshow.Engine.Shooting.Mise;

/// <summary>Reads a mise list task by task and says what cannot be done so. It knows no solver.</summary>
public static class MiseCheck
{
    /// <summary>What no mise list may hold, whatever its windows: too few hands, one blender used twice, juice before peel. Sentences.</summary>
    public static IReadOnlyList<string> Faults(MiseList mise)
    {
        ArgumentNullException.ThrowIfNull(mise);
        List<string> faults = [];
        var prepared = mise.Tasks.Where(task => task.Session is not MiseSession.DuringTheShoot).ToList();
        foreach (var task in prepared)
        {
            var busy = prepared.Where(other => other.Start <= task.Start && other.End > task.Start).Sum(other => other.Hands);
            if (busy > mise.Hands)
                faults.Add($"At {mise.Clock.Say(task.Start)} {busy} pairs of hands are busy and there are {mise.Hands}.");
            foreach (var other in prepared.Where(other => other != task && other.Equipment.Length > 0 && other.Equipment == task.Equipment && other.Start <= task.Start && other.End > task.Start))
                faults.Add($"\"{task.Text}\" and \"{other.Text}\" use the {task.Equipment} at once.");
            foreach (var before in prepared.Where(before => task.After.Contains(before.Key) && before.End > task.Start))
                faults.Add($"\"{task.Text}\" starts before \"{before.Text}\" is done.");
            if (task.End - task.Start < task.Duration)
                faults.Add($"\"{task.Text}\" has too little time.");
        }

        return faults;
    }

    /// <summary>The tasks that lie outside their windows.</summary>
    public static IReadOnlyList<MiseTask> OutsideWindow(MiseList mise)
    {
        ArgumentNullException.ThrowIfNull(mise);
        return [.. mise.Tasks.Where(task => task.Start < task.NotBefore || task.End > task.NotAfter)];
    }
}
