using Barshow.Engine.Specs;

namespace Barshow.Web.Drawing;

/// <summary>Draws a drink in its glass. The level is found from the volume of the liquid and of what the ice displaces, so the line is true.</summary>
public sealed class GlassSketch
{
    private static readonly GlassProfile Tumbler = new([new(0, 31), new(4, 32), new(60, 34), new(96, 36)], BaseMillimetres: 9);

    private readonly GlassPicture _picture;
    private readonly Vessel _vessel;
    private readonly GlassProfile _profile;
    private readonly Svg _svg = new();
    private readonly double _scale, _width, _foot, _floor, _middle, _level;
    private uint _dice;

    private GlassSketch(GlassPicture picture, double scale, double width, double height)
    {
        _picture = picture;
        _profile = picture.Glass?.Profile ?? Tumbler;
        _vessel = Vessel.Of(_profile.Points, picture.BrimfulMillilitres);
        (_scale, _width) = (scale, width);
        _foot = height - 2;
        _floor = _foot - (_profile.StemMillimetres + _profile.BaseMillimetres + (_profile.FootMillimetres > 0 ? 2.2 : 0)) * scale;
        _middle = width / 2;
        _level = picture.LiquidMillilitres <= 0 ? 0 : _vessel.LevelOf(Math.Min(_vessel.Capacity, picture.LiquidMillilitres + picture.DisplacedMillilitres));
        _dice = (uint)(picture.Seed * 7919 + 11);
    }

    private double Top => _vessel.Height;

    private double Rim => _vessel.RimRadius;

    /// <summary>How tall the glass stands, in millimetres, with room for what stands above the rim.</summary>
    public static double StandingMillimetres(GlassPicture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var profile = picture.Glass?.Profile ?? Tumbler;
        return Vessel.Of(profile.Points, picture.BrimfulMillilitres).Height + profile.StemMillimetres + profile.BaseMillimetres + (profile.FootMillimetres > 0 ? 2.2 : 0) + 18;
    }

    /// <summary>The inside of an SVG element of <paramref name="width"/> × <paramref name="height"/>; <paramref name="scale"/> is drawing units to the millimetre.</summary>
    public static string Draw(GlassPicture picture, double scale, double width, double height)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return new GlassSketch(picture, scale, width, height).Draw();
    }

    private string Draw()
    {
        _svg.Add($"<path d=\"{Body(0, Top)}\" class=\"glass-body\"/>");
        if (_level > 0)
        {
            _svg.Add($"<path d=\"{Body(0, _level)}\" fill=\"{_picture.Tint}\"/>");
            DrawIce();
            DrawFoam();
            DrawLeaves();
            DrawBubbles();
            DrawWashLine();
        }

        DrawGlass();
        if (_picture.Rimmed)
            DrawRim();
        if (_level > 0)
            GarnishSketch.Draw(_svg, _picture.Garnish, new(_middle, Y(Top), Rim * _scale, Y(_level), _scale));
        return _svg.ToString();
    }

    private double X(double radius) => _middle + radius * _scale;

    private double Y(double height) => _floor - height * _scale;

    private string Body(double from, double to)
    {
        var wall = _vessel.Wall(from, to);
        var left = wall.Reverse().Select(point => (X(-point.Radius), Y(point.Height))).ToList();
        var right = wall.Select(point => (X(point.Radius), Y(point.Height))).ToList();
        return $"M{Svg.Smooth(left)} L{Svg.Smooth(right)} Z";
    }

    private void DrawIce()
    {
        if (_picture.Ice == IceKind.None)
            return;
        var inside = _level + 14 < Top ? _level + 14 : Top;
        _svg.Raw("<g class=\"ice\">");
        if (_picture.Ice == IceKind.Crushed)
            DrawCrushed();
        else
            DrawCubes(inside);
        _svg.Raw("</g>");
    }

    private void DrawCubes(double inside)
    {
        var large = _picture.Ice == IceKind.Large;
        var side = (large ? Math.Min(1.25 * Rim, 50) : Rim > 38 ? 27 : 24) * _scale;
        var columns = large ? 1 : 2;
        var rows = large ? 1 : Math.Max(1, (int)(inside * _scale / side));
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var x = _middle + (large ? 0 : (column - .5) * side * 1.03) + (Roll() - .5) * 3 * _scale;
                var y = Math.Min(Y(_level) + side * .22 + row * side * .98 - (row > 0 ? 0 : side * .2) + (Roll() - .5) * 4 * _scale, _floor - side * .52);
                var turn = (Roll() - .5) * (large ? 12 : 34);
                _svg.Add($"<rect x=\"{x - side / 2}\" y=\"{y - side / 2}\" width=\"{side}\" height=\"{side}\" rx=\"{side * .16}\" transform=\"rotate({turn} {x} {y})\"/>");
            }
        }
    }

    private void DrawCrushed()
    {
        for (var i = 0; i < 58; i++)
        {
            var height = Roll() * (_level + 6);
            var reach = Math.Max(2, _vessel.RadiusAt(Math.Min(height, Top)) - 4);
            Chip(X((Roll() - .5) * 2 * reach), Y(height), (3.6 + Roll() * 4) * _scale);
        }

        for (var i = 0; i < 14; i++)
            Chip(X((Roll() - .5) * Rim * 1.5), Y(Top) - Roll() * 9 * _scale + 2 * _scale, (4 + Roll() * 3.5) * _scale);

        void Chip(double x, double y, double size) =>
            _svg.Add($"<path d=\"M{x - size} {y} l{size * .7} {-size * .8} l{size * 1.1} {size * .5} l{-size * .5} {size * .9} Z\"/>");
    }

    private void DrawFoam()
    {
        if (!_picture.Foam)
            return;
        var thick = Math.Min(7, _level * .4);
        _svg.Add($"<path d=\"{Body(_level - thick, _level)}\" class=\"foam\"/>");
        var radius = _vessel.RadiusAt(_level) - 3;
        if (_picture.OverflowMillilitres > 0)
            _svg.Add($"<path d=\"M{X(-radius)} {Y(_level)} Q{_middle} {Y(_level) - 9 * _scale} {X(radius)} {Y(_level)} Z\" class=\"foam\"/>");
    }

    private void DrawLeaves()
    {
        if (!_picture.Leaves)
            return;
        for (var i = 0; i < 5; i++)
        {
            var height = 6 + Roll() * Math.Min(34, _level * .5);
            var reach = Math.Max(2, _vessel.RadiusAt(height) - 8);
            var turn = Roll() * 180;
            _svg.Add($"<path d=\"M0 {-6 * _scale} Q{5 * _scale} 0 0 {6 * _scale} Q{-5 * _scale} 0 0 {-6 * _scale}Z\" transform=\"translate({X((Roll() - .5) * 2 * reach)} {Y(height)}) rotate({turn})\" class=\"leaf\"/>");
        }
    }

    private void DrawBubbles()
    {
        if (!_picture.Bubbles)
            return;
        for (var i = 0; i < 14; i++)
        {
            var height = Roll() * _level * .92;
            var reach = Math.Max(1, _vessel.RadiusAt(height) - 4);
            _svg.Add($"<circle cx=\"{X((Roll() - .5) * 2 * reach)}\" cy=\"{Y(height)}\" r=\"{(.7 + Roll() * .8) * _scale}\" class=\"bubble\"/>");
        }
    }

    private void DrawWashLine()
    {
        var over = _picture.OverflowMillilitres > 0;
        var height = over ? Top : _level;
        var radius = _vessel.RadiusAt(height);
        var y = Y(height);
        _svg.Add($"<path d=\"M{X(-radius) - 6 * _scale} {y} H{X(-radius) + 5 * _scale} M{X(radius) - 5 * _scale} {y} H{X(radius) + 6 * _scale}\" class=\"{(over ? "over" : "wash")}\"/>");
        if (!over)
            return;
        Drop(X(Rim) + 2.4 * _scale, Y(Top) + 5 * _scale, 1);
        Drop(X(-Rim) - 2 * _scale, Y(Top) + 10 * _scale, .8);

        void Drop(double x, double top, double size)
        {
            var unit = size * _scale;
            _svg.Add($"<path d=\"M{x} {top} q{3.4 * unit} {6 * unit} 0 {8 * unit} q{-3.4 * unit} {-2 * unit} 0 {-8 * unit}Z\" class=\"drop\"/>");
        }
    }

    private void DrawGlass()
    {
        var wall = _vessel.Wall(0, Top);
        var left = wall.Reverse().Select(point => (X(-point.Radius), Y(point.Height))).ToList();
        var right = wall.Select(point => (X(point.Radius), Y(point.Height))).ToList();
        _svg.Add($"<path d=\"M{Svg.Smooth(left)} L{Svg.Smooth(right)}\" class=\"outline\"/>");
        if (_profile.BaseMillimetres > 0)
        {
            var inner = _vessel.RadiusAt(Math.Min(6, Top / 4)) + 1.2;
            var outer = wall[0].Radius + 2;
            _svg.Add($"<path d=\"M{X(-inner)} {Y(6)} L{X(-outer)} {_foot} H{X(outer)} L{X(inner)} {Y(6)}\" class=\"outline\"/>");
        }

        if (_profile.FootMillimetres > 0)
        {
            if (_profile.StemMillimetres > 0)
                _svg.Add($"<path d=\"M{_middle} {Y(0)} V{_foot - 3 * _scale}\" class=\"outline\" stroke-width=\"2.2\"/>");
            _svg.Add($"<path d=\"M{X(-_profile.FootMillimetres)} {_foot} Q{_middle} {_foot - 5.5 * _scale} {X(_profile.FootMillimetres)} {_foot} Z\" class=\"outline glass-body\"/>");
        }
    }

    private void DrawRim()
    {
        for (var i = 0; i < 22; i++)
            _svg.Add($"<circle cx=\"{X((i / 21.0 - .5) * 2 * Rim)}\" cy=\"{Y(Top) - Roll() * 2.4 * _scale}\" r=\"{(.8 + Roll() * .7) * _scale}\" class=\"salt\"/>");
    }

    // The same drink is drawn alike every time, so its ice is thrown with dice of its own.
    private double Roll()
    {
        _dice = (uint)((ulong)_dice * 16807 % 2147483647);
        return _dice / 2147483647.0;
    }
}
