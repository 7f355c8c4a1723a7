using System.Text;
using System.Text.Json;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Cuts a brief written as JSON into the same parts as one written as text.</summary>
internal sealed class BriefJsonSplitter(List<Finding> findings)
{
    private readonly BriefParts _parts = new();
    private byte[] _bytes = [];
    private long _counted;
    private int _line = 1;

    public BriefParts Split(string text)
    {
        if (text.Length > BriefTextSplitter.MostCharacters)
        {
            findings.Add(BriefFindings.TooLong(1, "256 kB"));
            return _parts;
        }

        _bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(_bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = 8 });
        try
        {
            reader.Read();
            Expect(ref reader, JsonTokenType.StartObject);
            ReadBrief(ref reader);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            findings.Add(BriefFindings.JsonBroken(LineOf(ref reader), problem is JsonException ? "it ends early or a sign is out of place." : "a text, a number or a list was expected."));
        }

        return _parts;
    }

    private void ReadBrief(ref Utf8JsonReader reader)
    {
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var line = LineOf(ref reader);
            var key = BriefKeys.Folded(reader.GetString()!);
            reader.Read();
            if (key == "title")
                _parts.Title = new(Words(ref reader), line);
            else if (key == "drinks")
                ReadDrinks(ref reader);
            else
                ReadValues(ref reader, key, line, _parts.Keys);
        }
    }

    private void ReadDrinks(ref Utf8JsonReader reader)
    {
        Expect(ref reader, JsonTokenType.StartArray);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            if (_parts.Drinks.Count == BriefTextSplitter.MostDrinks)
            {
                findings.Add(BriefFindings.TooLong(LineOf(ref reader), "60 drinks"));
                return;
            }

            ReadDrink(ref reader);
        }
    }

    private void ReadDrink(ref Utf8JsonReader reader)
    {
        Expect(ref reader, JsonTokenType.StartObject);
        var line = LineOf(ref reader);
        var name = new BriefText("", line);
        var read = new DrinkParts(name);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var at = LineOf(ref reader);
            var key = BriefKeys.Folded(reader.GetString()!);
            reader.Read();
            switch (key)
            {
                case "name":
                    name = new(Words(ref reader), at);
                    break;
                case "lines":
                    ReadLines(ref reader, read.Lines);
                    break;
                case "finish":
                    read.Finish = new(Words(ref reader), at);
                    break;
                default:
                    ReadValues(ref reader, key, at, read.Keys);
                    break;
            }
        }

        var drink = new DrinkParts(name) { Finish = read.Finish };
        drink.Lines.AddRange(read.Lines);
        drink.Keys.AddRange(read.Keys);
        _parts.Drinks.Add(drink);
    }

    private void ReadLines(ref Utf8JsonReader reader, List<IngredientParts> lines)
    {
        Expect(ref reader, JsonTokenType.StartArray);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            var at = LineOf(ref reader);
            if (lines.Count == BriefTextSplitter.MostLines)
            {
                findings.Add(BriefFindings.TooLong(at, "40 lines for one drink"));
                reader.Skip();
            }
            else if (reader.TokenType == JsonTokenType.StartObject)
                lines.Add(LineWithSource(ref reader, at));
            else
                lines.Add(new(new(Words(ref reader), at)));
        }
    }

    private IngredientParts LineWithSource(ref Utf8JsonReader reader, int at)
    {
        BriefText line = new("", at), was = default;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var key = BriefKeys.Folded(reader.GetString()!);
            reader.Read();
            var value = new BriefText(Words(ref reader), LineOf(ref reader));
            if (key == BriefKeys.Was)
                was = value;
            else
                line = value;
        }

        return new(line) { Was = was.Text is null ? null : was };
    }

    // A value is a text, a number, or a list of them; a link may be an object of label and address.
    private void ReadValues(ref Utf8JsonReader reader, string key, int line, List<BriefKey> keys)
    {
        if (reader.TokenType == JsonTokenType.Null)
            return;
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            keys.Add(new(key, Text(ref reader), line));
            return;
        }

        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            var at = LineOf(ref reader);
            if (reader.TokenType != JsonTokenType.StartObject)
            {
                keys.Add(new(key, Text(ref reader), at));
                continue;
            }

            var values = new List<string>();
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                reader.Read();
                values.Add(Text(ref reader));
            }

            keys.Add(new(key, string.Join(", ", values), at));
        }
    }

    private static string Text(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.Number => Encoding.UTF8.GetString(reader.ValueSpan),
        _ => string.Join(' ', (reader.GetString() ?? "").Split('\n', '\r')).Trim(),
    };

    private static string Words(ref Utf8JsonReader reader)
    {
        Expect(ref reader, JsonTokenType.String);
        return Text(ref reader);
    }

    private static void Expect(ref Utf8JsonReader reader, JsonTokenType type)
    {
        if (reader.TokenType != type)
            throw new InvalidOperationException();
    }

    private int LineOf(ref Utf8JsonReader reader)
    {
        for (; _counted < reader.TokenStartIndex && _counted < _bytes.Length; _counted++)
            if (_bytes[_counted] == (byte)'\n')
                _line++;
        return _line;
    }
}
