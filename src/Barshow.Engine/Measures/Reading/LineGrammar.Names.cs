using System.Text;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <content>Names and notes.</content>
internal sealed partial class LineGrammar
{
    /// <summary>name = words up to a comma, a bracket, a spaced dash, a word that begins a note, or what is done with it; note = the rest.</summary>
    private (string Name, TextPlace? Place, string? Note) NameAndNote(int start, int end = int.MaxValue, int skipFirst = 0, bool isRest = false)
    {
        var from = start;
        while (from < end && run[from].Kind == TokenKind.Mark && !(run[from].Mark is '(' or '[' or '{' or '"' or '“' or '\'' or '‘' or '#'))
            from++;
        var at = from + skipFirst;
        var nameEnd = -1;
        StringBuilder? note = null;
        var noteFrom = -1;
        var hasNoun = false;
        string? head = null;
        var first = -1;
        while (at < end && run[at].Kind != TokenKind.End)
        {
            ref readonly var token = ref run[at];
            if (token.Kind == TokenKind.Mark && token.Mark is '(' or '[' or '{')
            {
                var isBefore = at == from && nameEnd < 0;
                var bracket = at;
                CloseNote(at);
                at = Bracket(at, end, ref note);
                if (isBefore)
                    from = at;
                else if (nameEnd < 0 && NameGoesOn(at))
                    (head, first, from) = ($"{head}{TextOf(from, bracket)} ", head is null ? from : first, at);
                else
                    CloseName(bracket);
                continue;
            }

            if (IsSegmentBreak(at, noteFrom >= 0))
            {
                CloseName(at);
                CloseNote(at);
                at++;
                if (SecondAt(at, end) is var afterSecond and > 0)
                    at = afterSecond;
                else
                    noteFrom = at;
                continue;
            }

            if (OpenSuffix(at, end, nameEnd < 0 && (hasNoun || isRest), noteFrom) is var afterOpen and > 0)
            {
                CloseName(at);
                CloseNote(at);
                at = afterOpen;
                noteFrom = at;
                continue;
            }

            if (OptionalSuffix(at) is var afterOptional and > 0)
            {
                CloseName(at);
                CloseNote(at);
                at = afterOptional;
                noteFrom = at;
                continue;
            }

            if (nameEnd < 0 && hasNoun && end == int.MaxValue && LateSecond(at) is var afterLate and > 0)
            {
                CloseName(at);
                at = afterLate;
                continue;
            }

            if (nameEnd < 0 && hasNoun && end == int.MaxValue)
                SayTwo(at);
            if (nameEnd < 0 && hasNoun && (_isTwo || BeginsNote(at, end)))
            {
                CloseName(at);
                noteFrom = at;
            }

            hasNoun |= token.Kind == TokenKind.Word && !token.Has(Role.Quality | Role.Determiner | Role.Article | Role.Treatment);
            at++;
        }

        CloseName(at);
        CloseNote(at);
        var place = nameEnd > from ? PlaceOf(head is null ? from : first, nameEnd) : (TextPlace?)null;
        return (place is null ? "" : head + TextOf(from, nameEnd), place, note?.ToString());

        // "rich (2:1) demerara syrup": what stands in the bracket is a note, and the name goes on behind it.
        bool NameGoesOn(int i) => i < end && run[i].Kind == TokenKind.Word && !BeginsNote(i, end) && OptionalSuffix(i) <= 0
            && OpenSuffix(i, end, true, -1) <= 0 && !run[i].Has(Role.Treatment);

        void CloseName(int to)
        {
            if (nameEnd >= 0)
                return;
            while (to > from && (IsTrailingEdge(to - 1) || to - 1 > from && run[to - 1].Has(Role.Filler)))
                to--;
            nameEnd = to;
        }

        void CloseNote(int to)
        {
            if (noteFrom < 0)
                return;
            AppendNote(ref note, noteFrom, to);
            noteFrom = -1;
        }
    }

    private void AppendNote(ref StringBuilder? note, int from, int to)
    {
        while (from < to && run[from].Kind == TokenKind.Mark && run[from].Mark is not ('(' or '[' or '"' or '“'))
            from++;
        while (to > from && (IsTrailingEdge(to - 1) || run[to - 1].Has(Role.Filler)))
            to--;
        if (to == from + 2 && FillerAt(from) == to)
            return;
        if (TextOf(from, to) is not { Length: > 0 } text)
            return;
        note ??= new();
        if (note.Length > 0)
            note.Append(", ");
        note.Append(text);
    }

    private bool IsTrailingEdge(int i) => run[i].Kind == TokenKind.Mark
        && run[i].Mark is '.' or ',' or ';' or ':' or '-' or '–' or '*' or '|' or '/' or '·' or '_' or '=' or '"' or '”' or '`' or '…' or '+' or '&' or '~' or '#' or '>' or '!' or '\'' or '’' or '†' or '‡' or '\\' or '»' or '›'
        || run[i].Kind == TokenKind.Mark && char.IsSurrogate(run[i].Mark);

    // A comma or semicolon always; a dash, stroke or dot only with room around it.
    private bool IsSegmentBreak(int i, bool inNote)
    {
        ref readonly var token = ref run[i];
        if (token.Kind != TokenKind.Mark)
            return false;
        return token.Mark switch
        {
            ',' => !_isListed && !(run.Touches(i) && run.Touches(i + 1) && run[i - 1].Kind == TokenKind.Digits && run[i + 1].Kind == TokenKind.Digits),
            ';' => true,
            '-' or '–' => !inNote && !run.Touches(i) && !run.Touches(i + 1) || token.Mark == '–' && !inNote && !run.Touches(i + 1),
            '/' or '|' or '·' or '=' => !inNote && SecondAhead(i + 1),
            ':' => !inNote && !run.Touches(i + 1) && !(run[i - 1].Kind == TokenKind.Digits && run[i + 1].Kind == TokenKind.Digits),
            _ => false,
        };
    }

    private bool SecondAhead(int i) => _second is null && _measure is not null && _amounts.Measure(i, out var measure) > 0 && IsOtherSide(measure);

    // "2 oz white rum, 60 ml": a whole segment that is the other side.
    private int SecondAt(int i, int end)
    {
        if (end == int.MaxValue && OpenAmount(i, int.MaxValue) is var open and > 0)
            return open;
        if (_second is not null || _measure is null || end != int.MaxValue || run[i].Kind is TokenKind.Word && run[i].Lexeme is null)
            return -1;
        var at = run[i].Has(Role.Or) ? i + 1 : i;
        var next = _amounts.Measure(at, out var measure);
        if (next < 0 || !IsOtherSide(measure) || !IsSegmentEnd(next))
            return -1;
        TakeSecond(measure);
        return next;
    }

    private bool IsSegmentEnd(int i) => run[i].Kind == TokenKind.End || run[i].Kind == TokenKind.Mark && run[i].Mark is ',' or ';' or ')' or ']' or '}' or '(' or '[' || run[i].Is('.') && run[i + 1].Kind == TokenKind.End;

    // As it was written, runs of white space made one.
    private string? TextOf(int from, int to)
    {
        if (to <= from)
            return null;
        var text = run.Text.AsSpan(run[from].Start, run[to - 1].End - run[from].Start);
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsWhiteSpace(text[i]) && (text[i] != ' ' || text[i + 1] is ' ' or '\t'))
                return Respaced(text);
        }

        return text.ToString();
    }

    private static string Respaced(ReadOnlySpan<char> text)
    {
        var respaced = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (!char.IsWhiteSpace(c))
                respaced.Append(c);
            else if (respaced.Length > 0 && respaced[^1] != ' ')
                respaced.Append(' ');
        }

        return respaced.ToString();
    }
}
