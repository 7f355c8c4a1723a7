namespace Barshow.Engine.Callouts.Captions;

/// <summary>What a line of times has that its format does not allow.</summary>
[Flags]
internal enum TimingDeparture
{
    None = 0,
    Comma = 1,
    ShortHours = 2,
    ShortMinutes = 4,
    ShortFraction = 8,
    MissingFraction = 16,
}

/// <summary>The times of a cue in milliseconds, with what stands after them.</summary>
internal readonly record struct CueTiming(long Start, long End, string Settings)
{
    public const string Arrow = "-->";

    /// <summary>Reads a line of times exactly as the W3C's parser does ("collect WebVTT cue timings and settings").</summary>
    public static bool TryRead(ReadOnlySpan<char> line, out CueTiming timing)
    {
        timing = default;
        var at = SkipSpace(line, 0);
        if (!TryStamp(line, ref at, out var start))
            return false;
        at = SkipSpace(line, at);
        if (!line[at..].StartsWith(Arrow, StringComparison.Ordinal))
            return false;
        at = SkipSpace(line, at + Arrow.Length);
        if (!TryStamp(line, ref at, out var end))
            return false;
        timing = new(start, end, line[at..].Trim().ToString());
        return true;
    }

    /// <summary>Reads a line of times as a person would: a comma, one figure, no fraction, no hours.</summary>
    public static bool TryReadKindly(ReadOnlySpan<char> line, out CueTiming timing, out TimingDeparture departures)
    {
        departures = TimingDeparture.None;
        timing = default;
        var arrow = line.IndexOf(Arrow, StringComparison.Ordinal);
        if (arrow < 0)
            return false;
        var after = line[(arrow + Arrow.Length)..].TrimStart();
        var length = 0;
        while (length < after.Length && (char.IsAsciiDigit(after[length]) || after[length] is ':' or '.' or ','))
            length++;
        if (!TryStampKindly(line[..arrow].Trim(), ref departures, out var start) || !TryStampKindly(after[..length], ref departures, out var end))
            return false;
        timing = new(start, end, after[length..].Trim().ToString());
        return true;
    }

    /// <summary>Reads one time that fills the whole text, kindly.</summary>
    public static bool TryStampKindly(ReadOnlySpan<char> text, ref TimingDeparture departures, out long milliseconds)
    {
        milliseconds = 0;
        Span<long> parts = stackalloc long[3];
        Span<int> lengths = stackalloc int[3];
        var count = 0;
        var at = 0;
        while (true)
        {
            var from = at;
            long value = 0;
            while (at < text.Length && char.IsAsciiDigit(text[at]) && at - from < 9)
                value = value * 10 + (text[at++] - '0');
            if (at == from || count == 3)
                return false;
            (parts[count], lengths[count]) = (value, at - from);
            count++;
            if (at < text.Length && text[at] == ':')
                at++;
            else
                break;
        }

        if (count < 2)
            return false;
        var (hours, minutes, seconds) = count == 3 ? (parts[0], parts[1], parts[2]) : (0L, parts[0], parts[1]);
        if (minutes > 59 || seconds > 59 || hours > 99_999)
            return false;
        if (count == 3 && lengths[0] < 2)
            departures |= TimingDeparture.ShortHours;
        if (lengths[count - 1] < 2 || lengths[count - 2] < 2)
            departures |= TimingDeparture.ShortMinutes;
        if (!TryFraction(text[at..], ref departures, out var fraction))
            return false;
        milliseconds = ((hours * 60 + minutes) * 60 + seconds) * 1000 + fraction;
        return true;
    }

    private static bool TryFraction(ReadOnlySpan<char> text, ref TimingDeparture departures, out long milliseconds)
    {
        milliseconds = 0;
        if (text.IsEmpty)
        {
            departures |= TimingDeparture.MissingFraction;
            return true;
        }

        if (text[0] is not ('.' or ',') || text.Length is < 2 or > 10 || text[1..].ContainsAnyExceptInRange('0', '9'))
            return false;
        if (text[0] == ',')
            departures |= TimingDeparture.Comma;
        if (text.Length != 4)
            departures |= TimingDeparture.ShortFraction;
        for (var i = 1; i <= 3; i++)
            milliseconds = milliseconds * 10 + (i < text.Length ? text[i] - '0' : 0);
        return true;
    }

    // "Collect a WebVTT timestamp": digits; if not exactly two, or above 59, they are hours.
    private static bool TryStamp(ReadOnlySpan<char> line, ref int at, out long milliseconds)
    {
        milliseconds = 0;
        if (!TryDigits(line, ref at, out var first, out var figures))
            return false;
        var isHours = figures != 2 || first > 59;
        if (!TryColonTwo(line, ref at, out var second))
            return false;
        long hours, minutes, seconds;
        if (isHours || (at < line.Length && line[at] == ':'))
        {
            if (!TryColonTwo(line, ref at, out var third))
                return false;
            (hours, minutes, seconds) = (first, second, third);
        }
        else
        {
            (hours, minutes, seconds) = (0, first, second);
        }

        if (at >= line.Length || line[at] != '.')
            return false;
        at++;
        if (!TryDigits(line, ref at, out var fraction, out var places) || places != 3 || minutes > 59 || seconds > 59 || hours > 999_999_999)
            return false;
        milliseconds = ((hours * 60 + minutes) * 60 + seconds) * 1000 + fraction;
        return true;
    }

    private static bool TryColonTwo(ReadOnlySpan<char> line, ref int at, out long value)
    {
        value = 0;
        if (at >= line.Length || line[at] != ':')
            return false;
        at++;
        return TryDigits(line, ref at, out value, out var figures) && figures == 2;
    }

    private static bool TryDigits(ReadOnlySpan<char> line, ref int at, out long value, out int figures)
    {
        var from = at;
        value = 0;
        while (at < line.Length && char.IsAsciiDigit(line[at]))
        {
            value = Math.Min(value * 10 + (line[at] - '0'), 10_000_000_000);
            at++;
        }

        figures = at - from;
        return figures > 0;
    }

    private static int SkipSpace(ReadOnlySpan<char> line, int at)
    {
        while (at < line.Length && line[at] is ' ' or '\t' or '\f')
            at++;
        return at;
    }
}
