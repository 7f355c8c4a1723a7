using Barshow.Engine.Measures;

namespace Barshow.Web.Drawing;

/// <summary>What a block of the day is, for its drawing.</summary>
public enum DayBlockKind
{
    /// <summary>A first take.</summary>
    Take,

    /// <summary>A later take of a drink already filmed.</summary>
    TakeAgain,

    /// <summary>The turn-round between takes.</summary>
    Reset,

    /// <summary>Talk, set-up, cleaning.</summary>
    Work,

    /// <summary>A break.</summary>
    Break,
}

/// <summary>A block of the shoot day.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Minutes since the first midnight of the day.</param>
/// <param name="Minutes">How long it takes.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Drink">Place of its drink in viewer order, counted from 1; 0 for none.</param>
public sealed record DayBlock(DayBlockKind Kind, double From, double Minutes, string Name, int Drink = 0)
{
    /// <summary>Minutes since midnight at which it ends.</summary>
    public double To => From + Minutes;
}

/// <summary>A stretch in which something is fresh.</summary>
/// <param name="Name">What.</param>
/// <param name="From">Minutes since midnight.</param>
/// <param name="To">Minutes since midnight.</param>
/// <param name="Tender">Whether it fades within a few hours.</param>
public sealed record DayWindow(string Name, double From, double To, bool Tender);

/// <summary>A stretch of takes that share a set-up.</summary>
/// <param name="Name">What they share: "shaking".</param>
/// <param name="From">Minutes since midnight.</param>
/// <param name="To">Minutes since midnight.</param>
public sealed record DaySetup(string Name, double From, double To);

/// <summary>A drink of the viewer order beside the day.</summary>
/// <param name="Number">Its place, counted from 1.</param>
/// <param name="Name">Its name.</param>
/// <param name="Line">What stands under the name.</param>
/// <param name="Picture">How it looks.</param>
public sealed record DayDrink(int Number, string Name, string Line, GlassPicture Picture);

/// <summary>A shoot day to draw.</summary>
/// <param name="Blocks">In order of time.</param>
/// <param name="Windows">Fresh windows.</param>
/// <param name="Setups">Set-ups.</param>
/// <param name="Viewer">The viewer order.</param>
public sealed record DayPicture(IReadOnlyList<DayBlock> Blocks, IReadOnlyList<DayWindow> Windows, IReadOnlyList<DaySetup> Setups, IReadOnlyList<DayDrink> Viewer)
{
    /// <summary>When the first block begins, in minutes since midnight.</summary>
    public double From => Blocks.Count == 0 ? 0 : Blocks.Min(block => block.From);

    /// <summary>When the last block ends, in minutes since midnight.</summary>
    public double To => Blocks.Count == 0 ? 0 : Blocks.Max(block => block.To);
}

/// <summary>Draws the shoot day downwards: hours on a rule, fresh windows behind the blocks, a thread from each first take to its place in the viewer order.</summary>
public sealed class DaySketch
{
    /// <summary>Width of the wide drawing.</summary>
    public const double WideWidth = 1180;

    /// <summary>Width of the narrow drawing.</summary>
    public const double NarrowWidth = 340;

    private readonly DayPicture _day;
    private readonly bool _narrow;
    private readonly Svg _svg = new();
    private readonly double _unit, _blockX, _blockWidth, _ruleX;
    private readonly List<Interval> _windowLabels = [];

    private DaySketch(DayPicture day, bool narrow)
    {
        (_day, _narrow) = (day, narrow);
        _unit = UnitOf(day);
        (_blockX, _blockWidth, _ruleX) = narrow ? (58, NarrowWidth - 58 - 66, 44) : (212, 268, 52);
    }

    /// <summary>Height of the drawing: the shortest block keeps room for its words, and the viewer order for its glasses.</summary>
    public static double HeightOf(DayPicture day, bool narrow)
    {
        ArgumentNullException.ThrowIfNull(day);
        var blocks = (day.To - day.From) * UnitOf(day) + 32;
        return narrow ? blocks : Math.Max(blocks, 100 + day.Viewer.Count * 84);
    }

    /// <summary>The inside of the SVG element.</summary>
    public static string Draw(DayPicture day, bool narrow)
    {
        ArgumentNullException.ThrowIfNull(day);
        return new DaySketch(day, narrow).Draw();
    }

    private static double UnitOf(DayPicture day)
    {
        var shortest = day.Blocks.Where(block => block.Kind != DayBlockKind.Reset).Select(block => block.Minutes).DefaultIfEmpty(10).Min();
        return Math.Clamp(19 / Math.Max(1, shortest), 2.2, 4.2);
    }

    private string Draw()
    {
        DrawHours();
        if (_narrow)
            DrawWindowBars();
        else
            DrawWindows();
        if (!_narrow)
            DrawSetups();
        foreach (var block in _day.Blocks)
            DrawBlock(block);
        if (!_narrow)
            DrawViewerOrder();
        return _svg.ToString();
    }

    private double Y(double minute) => (minute - _day.From) * _unit + 14;

    private void DrawHours()
    {
        var first = Math.Ceiling(_day.From / 10) * 10;
        for (var minute = first; minute <= _day.To; minute += 10)
        {
            var hour = minute % 60 == 0;
            _svg.Add($"<path d=\"M{_ruleX} {Y(minute)}h{(hour ? 14 : minute % 30 == 0 ? 9 : 5)}\" class=\"tick\"/>");
            if (hour)
                _svg.Add($"<text x=\"{_ruleX - 4}\" y=\"{Y(minute) + 5}\" class=\"hour\" text-anchor=\"end\">{Clock(minute)}</text>");
        }

        _svg.Add($"<path d=\"M{_ruleX} {Y(_day.From)}V{Y(_day.To)}\" class=\"tick\"/>");
    }

    // The longest window stands widest, so that each end shows beside the others.
    private void DrawWindows()
    {
        var windows = Drawn().ToList();
        for (var i = 0; i < windows.Count; i++)
        {
            var (window, top, bottom) = windows[i];
            var inset = Math.Min(i, 5);
            var x = _blockX - 22 + inset * 3;
            var width = _blockWidth + 236 - inset * 26;
            _svg.Add($"<rect x=\"{x}\" y=\"{top}\" width=\"{width}\" height=\"{bottom - top}\" class=\"window {(window.Tender ? "green" : "")}\"/><path d=\"M{x} {bottom}h{width}\" class=\"window-end\"/>");
        }

        for (var i = 0; i < windows.Count; i++)
        {
            var (window, _, bottom) = windows[i];
            var right = _blockX - 22 + Math.Min(i, 5) * 3 + _blockWidth + 236 - Math.Min(i, 5) * 26 - 6;
            var y = bottom - 6;
            while (_windowLabels.Exists(taken => taken.Low < y && y < taken.High))
                y -= 15;
            _windowLabels.Add(new(y - 14, y + 14));
            _svg.Add($"<text x=\"{right}\" y=\"{y}\" text-anchor=\"end\" class=\"window-name\">{window.Name} to {Clock(window.To)}</text>");
        }
    }

    private void DrawWindowBars()
    {
        var bars = Drawn().Take(3).ToList();
        for (var i = 0; i < bars.Count; i++)
        {
            var (window, top, bottom) = bars[i];
            var x = _blockX + _blockWidth + 6 + i * 19;
            _svg.Add($"<rect x=\"{x}\" y=\"{top}\" width=\"14\" height=\"{bottom - top}\" class=\"window {(window.Tender ? "green" : "")}\"/><path d=\"M{x - 2} {bottom}h18\" class=\"window-end\"/><text transform=\"translate({x + 11} {bottom - 8}) rotate(-90)\" class=\"window-name\">{window.Name}</text>");
        }
    }

    private IEnumerable<(DayWindow Window, double Top, double Bottom)> Drawn() => _day.Windows
        .Where(window => window.To > _day.From && window.From < _day.To)
        .OrderByDescending(window => window.To - window.From)
        .Select(window => (window, Math.Max(Y(window.From), 6), Math.Min(Y(window.To), Y(_day.To))));

    private void DrawSetups()
    {
        foreach (var setup in _day.Setups)
            _svg.Add($"<path d=\"M100 {Y(setup.From)}h-8V{Y(setup.To)}h8\" class=\"bracket\"/><text x=\"106\" y=\"{(Y(setup.From) + Y(setup.To)) / 2 + 5}\" class=\"setup\">{Short(setup.Name, 13)}</text>");
    }

    private void DrawBlock(DayBlock block)
    {
        var (y, height) = (Y(block.From), block.Minutes * _unit);
        var line = y + height / 2 + 5;
        var right = _blockX + _blockWidth - 10;
        switch (block.Kind)
        {
            case DayBlockKind.Reset:
                _svg.Add($"<path d=\"M{_blockX + 6} {y + height / 2}h{_blockWidth - 12}\" class=\"reset\"/>");
                return;
            case DayBlockKind.Take:
                _svg.Add($"<rect x=\"{_blockX}\" y=\"{y}\" width=\"{_blockWidth}\" height=\"{height}\" class=\"take\"/><text x=\"{_blockX + 12}\" y=\"{line}\" class=\"take-name on-take\">{Short(block.Name, _narrow ? 19 : 28)}</text>");
                _svg.Add($"<text x=\"{right}\" y=\"{line}\" text-anchor=\"end\" class=\"side on-take\">{(_narrow ? $"viewer {block.Drink}" : Clock(block.From))}</text>");
                return;
            case DayBlockKind.TakeAgain:
                _svg.Add($"<rect x=\"{_blockX}\" y=\"{y}\" width=\"{_blockWidth}\" height=\"{height}\" class=\"take-again\"/><text x=\"{_blockX + 12}\" y=\"{line}\" class=\"take-name\">{Short(block.Name, _narrow ? 26 : 28)}</text>");
                if (!_narrow)
                    _svg.Add($"<text x=\"{right}\" y=\"{line}\" text-anchor=\"end\" class=\"side\">{Clock(block.From)}</text>");
                return;
            default:
                _svg.Add($"<rect x=\"{_blockX}\" y=\"{y}\" width=\"{_blockWidth}\" height=\"{height}\" class=\"block {(block.Kind == DayBlockKind.Break ? "rest" : "")}\"/><text x=\"{_blockX + 12}\" y=\"{line}\" class=\"side\">{Short(block.Name, _narrow ? 22 : 32)}</text>");
                _svg.Add($"<text x=\"{right}\" y=\"{line}\" text-anchor=\"end\" class=\"side\">{(_narrow ? $"{Figures.Whole(block.Minutes)} min" : Clock(block.From))}</text>");
                return;
        }
    }

    private void DrawViewerOrder()
    {
        const double x = 790;
        var height = HeightOf(_day, narrow: false);
        var step = (height - 110) / Math.Max(1, _day.Viewer.Count);
        _svg.Add($"<text x=\"{x - 4}\" y=\"24\" class=\"display\">Viewer order</text>");
        for (var i = 0; i < _day.Viewer.Count; i++)
        {
            var drink = _day.Viewer[i];
            var y = 74 + i * step;
            if (_day.Blocks.FirstOrDefault(block => block.Kind == DayBlockKind.Take && block.Drink == drink.Number) is { } take)
            {
                var from = Y(take.From) + take.Minutes * _unit / 2;
                var edge = _blockX + _blockWidth;
                _svg.Add($"<path d=\"M{edge} {from}C{edge + 190} {from} {x - 190} {y} {x - 14} {y}\" class=\"thread\"/><circle cx=\"{edge}\" cy=\"{from}\" r=\"3.5\" class=\"thread-end\"/><circle cx=\"{x - 14}\" cy=\"{y}\" r=\"3.5\" class=\"thread-end\"/>");
            }

            _svg.Add($"<svg x=\"{x}\" y=\"{y - 46}\" width=\"60\" height=\"76\" viewBox=\"0 0 60 76\">").Raw(GlassSketch.Draw(drink.Picture, .5, 60, 76));
            _svg.Add($"</svg><path d=\"M{x} {y + 29}h60\" class=\"tick last\"/><text x=\"{x + 76}\" y=\"{y - 3}\" class=\"display\">{drink.Number}  {drink.Name}</text><text x=\"{x + 76}\" y=\"{y + 18}\" class=\"soft\">{drink.Line}</text>");
        }
    }

    private static string Short(string name, int longest) => name.Length <= longest ? name : name[..(longest - 1)].TrimEnd() + "…";

    private static string Clock(double minute) => Figures.Hour(new TimeOnly((int)(Math.Round(minute) % 1440 + 1440) % 1440 / 60, (int)(Math.Round(minute) % 60 + 60) % 60));
}
