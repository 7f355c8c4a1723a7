using System.Text;

namespace Barshow.Engine.Callouts.Captions;

/// <summary>Turns the bytes of a caption file into text: UTF-8, UTF-16 with or without its mark, else Windows-1252.</summary>
internal static class CaptionEncoding
{
    private static readonly UTF8Encoding StrictUtf8 = new(false, throwOnInvalidBytes: true);

    // The code page's letters for 0x80 to 0x9F (WHATWG Encoding Standard, index windows-1252); the rest of it is Latin 1.
    private const string Windows1252 = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";

    public static string Decode(ReadOnlySpan<byte> bytes, CaptionNotes notes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            return Encoding.UTF8.GetString(bytes[3..]);
        if (Utf16(bytes) is { } encoding)
        {
            notes.Tolerate(Departure.Encoding16, 1);
            return encoding.GetString(bytes);
        }

        try
        {
            return StrictUtf8.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            if (IsMostlyUtf8(bytes))
                return Encoding.UTF8.GetString(bytes);
            notes.Tolerate(Departure.EncodingLegacy, 1);
            return string.Create(bytes.Length, bytes, (text, source) =>
            {
                for (var i = 0; i < source.Length; i++)
                    text[i] = source[i] is >= 0x80 and <= 0x9F ? Windows1252[source[i] - 0x80] : (char)source[i];
            });
        }
    }

    private static UnicodeEncoding? Utf16(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]))
            return new(bigEndian: false, byteOrderMark: true);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return new(bigEndian: true, byteOrderMark: true);
        if (bytes.Length < 4 || bytes.Length % 2 != 0)
            return null;

        // Without a mark: the ASCII letters of the first lines have a nought beside each of them.
        var sample = bytes[..Math.Min(bytes.Length, 64)];
        int even = 0, odd = 0;
        for (var i = 0; i < sample.Length; i++)
        {
            if (sample[i] == 0)
                _ = i % 2 == 0 ? even++ : odd++;
        }

        var most = sample.Length / 2 * 3 / 4;
        return odd >= most && even == 0 ? new(false, false) : even >= most && odd == 0 ? new(true, false) : null;
    }

    // A few broken bytes among good UTF-8 letters, as a cut file has; a legacy file has none that are good.
    private static bool IsMostlyUtf8(ReadOnlySpan<byte> bytes)
    {
        int good = 0, bad = 0;
        while (bytes.Length > 0)
        {
            var status = Rune.DecodeFromUtf8(bytes, out var rune, out var used);
            if (status != System.Buffers.OperationStatus.Done)
                bad++;
            else if (rune.Value >= 0x80)
                good++;
            bytes = bytes[Math.Max(1, used)..];
        }

        return good > bad;
    }
}
