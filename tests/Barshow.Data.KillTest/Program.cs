using Barshow.Data.KillTest;

// save FOLDER [--drop]         saves a hundred times over, printing each save that was acknowledged; it is killed meanwhile
// run FOLDER KILLS [--drop]    kills such a saver KILLS times and looks each time whether what it acknowledged is there
return args switch
{
    ["save", var folder, .. var rest] => await Saver.RunAsync(folder, dropOne: rest.Contains("--drop")),
    ["run", var folder, var kills, .. var rest] => await Killer.RunAsync(folder, int.Parse(kills, System.Globalization.CultureInfo.InvariantCulture), dropOne: rest.Contains("--drop")),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("Usage: save FOLDER [--drop] | run FOLDER KILLS [--drop]");
    return 1;
}
