using System.Text;

namespace Barshow.Web.Verbs;

/// <summary>The lines of a stream in UTF-8, one at a time, in constant memory whatever the stream holds.</summary>
/// <remarks>A line ends with LF, CRLF or CR. Of a line that is too long the start is kept and the rest is passed over. Bytes that are no UTF-8 become U+FFFD.</remarks>
internal sealed class BoundedLines(Stream stream, Action beforeWaiting)
{
    /// <summary>The longest line that is given whole, in UTF-16 characters.</summary>
    public const int Longest = 65_536;

    private readonly Decoder _decoder = new UTF8Encoding(false, throwOnInvalidBytes: false).GetDecoder();
    private readonly byte[] _bytes = new byte[16_384];
    private readonly char[] _chunk = new char[16_384 + 2];
    private readonly char[] _line = new char[Longest];
    private int _at;
    private int _count;
    private bool _afterReturn;
    private bool _started;

    /// <summary>The next line; null at the end of the stream.</summary>
    /// <param name="isCut">Whether the line was longer than <see cref="Longest"/>.</param>
    public string? Next(out bool isCut)
    {
        isCut = false;
        var length = 0;
        var any = false;
        while (true)
        {
            if (_at == _count && !Fill())
                return any ? new string(_line, 0, length) : null;
            var c = _chunk[_at++];
            if (c == '\n' && _afterReturn)
            {
                _afterReturn = false;
                continue;
            }

            _afterReturn = c == '\r';
            if (c is '\n' or '\r')
                return new string(_line, 0, length);
            any = true;
            if (length < Longest)
                _line[length++] = c;
            else
                isCut = true;
        }
    }

    private bool Fill()
    {
        beforeWaiting();
        int read;
        do
        {
            read = stream.Read(_bytes, 0, _bytes.Length);
            _count = _decoder.GetChars(_bytes, 0, read, _chunk, 0, flush: read == 0);
            _at = 0;
            if (!_started && _count > 0)
            {
                _started = true;
                _at = _chunk[0] == '\uFEFF' ? 1 : 0;
            }
        }
        while (_at == _count && read > 0);
        return _at < _count;
    }
}
