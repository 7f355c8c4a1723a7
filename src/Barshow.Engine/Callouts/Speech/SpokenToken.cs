namespace Barshow.Engine.Callouts.Speech;

/// <summary>How strongly a word is parted from the next.</summary>
internal enum Pause : byte
{
    None,
    Comma,
    Sentence,
}

/// <summary>A spoken word: letters and figures without punctuation. Offsets count from 0 in <see cref="SpeechText.Text"/>.</summary>
/// <param name="Start">Its first character.</param>
/// <param name="End">Just after its last.</param>
/// <param name="Word">Folded: lower case, no accents.</param>
/// <param name="Pause">What stands between it and the next word.</param>
internal readonly record struct SpokenToken(int Start, int End, string Word, Pause Pause);
