using Barshow.Benchmarks.Library;
using Barshow.Benchmarks.Measures;
using Barshow.Benchmarks.Planning;
using Barshow.Benchmarks.Shooting;

if (args is ["library", ..])
    return await LibrarySpeed.PrintAsync(Console.Out, args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 200);
if (args is ["read"])
    ReadingSpeed.Print(Console.Out);
else if (args is ["stock"])
    StockSpeed.Print(Console.Out);
else if (args is ["plan", ..])
    LineupSpeed.Print(Console.Out, args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 10);
else if (args is ["plan-any-base", ..])
    LineupSpeed.Print(Console.Out, args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 10, anyBase: true);
else if (args is ["plan-stages", var seed])
    LineupStages.Print(Console.Out, int.Parse(seed, System.Globalization.CultureInfo.InvariantCulture));
else if (args is ["shoot", ..])
    ShootSpeed.Print(Console.Out, args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 10);
else
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
